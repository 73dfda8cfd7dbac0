import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url));

/** The browser code, compiled as `npm start` compiles it, so that a test never looks at an old one. */
export function compilePage(): void {
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'bot/doors/page/web'], { cwd: ROOT, stdio: 'pipe' });
}
