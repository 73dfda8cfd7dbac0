import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url));
const WEB = `${ROOT}bot/doors/page/web/`;

/** Every source has its compiled file, and none is older than its source. */
const isFresh = (): boolean => readdirSync(WEB).filter(n => n.endsWith('.ts')).every(n => {
  const out = `${WEB}out/${n.replace(/\.ts$/, '.js')}`;
  return existsSync(out) && statSync(out).mtimeMs >= Math.max(statSync(WEB + n).mtimeMs, statSync(`${WEB}tsconfig.json`).mtimeMs);
});

/** The browser code, compiled as `npm start` compiles it, so that a test never looks at an old one; left alone when it is new, as other tests may be reading it. */
export function compilePage(): void {
  if (!isFresh()) execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'bot/doors/page/web'], { cwd: ROOT, stdio: 'pipe' });
}
