import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readConfig } from '../bot/config.ts';
import { shopInMemory } from './bot/shop-in-memory.ts';

/** Every example of the README is run: the talk word for word in one shop, the commands as they stand. */
const root = resolve(import.meta.dirname, '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const blocks = (kind: string): string[] => [...readme.matchAll(new RegExp(`\`\`\`${kind}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(m => m[1]!);

test('the talk is what Pawl answers', () => {
  const shop = shopInMemory();
  let at = '';
  const said: string[] = [];
  const lines = blocks('talk').flatMap(b => b.trimEnd().split('\n'));
  for (const line of lines) {
    if (line.startsWith('at> ')) { at = line.slice(4); said.push(line); }
    if (line.startsWith('you> ')) said.push(line, ...shop.say(line.slice(5), at).say.split('\n').map(l => `bot> ${l}`));
  }
  expect(said).toEqual(lines);
  expect(said.filter(l => l.startsWith('you> ')).length).toBeGreaterThan(10);
  shop.close();
});

describe('the commands', () => {
  const commands = blocks('sh').flatMap(b => b.trim().split('\n'));
  const dir = mkdtempSync(join(tmpdir(), 'readme-'));
  test.each(commands.filter(c => c.startsWith('npm run -s')))('%s', command => {
    const out = execFileSync('bash', ['-c', command], { cwd: root, env: { ...process.env, PAWL_DATA: dir }, encoding: 'utf8' });
    expect(out.trim()).not.toBe('');
  });
  test('the two first ones are the scripts that package.json has', () => {
    expect(commands.slice(0, 2)).toEqual(['npm ci && npm start', 'npm ci && npm test']);
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> };
    expect(Object.keys(scripts)).toEqual(expect.arrayContaining(['start', 'test']));
    rmSync(dir, { recursive: true, force: true });
  });
});

test('the settings are those that the program reads', () => {
  const table = [...new Set([...readme.matchAll(/`(PAWL_[A-Z_]+)`/g)].map(m => m[1]!))].sort();
  let known = '';
  try { readConfig({ PAWL_NOT_ONE: 'x' }); } catch (error) { known = (error as Error).message; }
  expect(table).toEqual([...known.matchAll(/PAWL_(?!NOT_ONE)[A-Z_]+/g)].map(m => m[0]).sort());
});
