import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

/** The directions of the house: who may import whom. Read from the files themselves, so that a new arrow in the wrong direction fails here. */
const root = resolve(import.meta.dirname, '..');
const skipped = new Set(['node_modules', 'out', 'model']);
const sources = (dir: string): string[] => readdirSync(join(root, dir)).flatMap(name => {
  const path = join(dir, name);
  if (statSync(join(root, path)).isDirectory()) return skipped.has(name) && dir !== 'domain' ? [] : sources(path);
  return /\.ts$/.test(name) ? [path] : [];
});
const importsOf = (file: string): string[] =>
  [...readFileSync(join(root, file), 'utf8').matchAll(/(?:^|\n)\s*(?:import|export)\s[^'"]*?from\s+['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)\s*import\s+['"]([^'"]+)['"]/g)]
    .map(m => (m[1] ?? m[2] ?? m[3])!);
/** Where an import leads: a path inside the project, or the name of a library. */
const leadsTo = (file: string, to: string): string => (to.startsWith('.') ? relative(root, resolve(root, dirname(file), to)) : to);

const all = ['bot', 'nlp', 'domain'].flatMap(sources);
const arrows = all.flatMap(file => importsOf(file).map(to => ({ file, to: leadsTo(file, to) })));
const wrong = (from: (f: string) => boolean, to: (t: string) => boolean) => arrows.filter(a => from(a.file) && to(a.to)).map(a => `${a.file} -> ${a.to}`);
const under = (...dirs: string[]) => (f: string) => dirs.some(d => f.startsWith(d));

describe('directions of import', () => {
  test('the house has rooms to look at', () => expect(all.length).toBeGreaterThan(50));
  test('domain knows neither words nor doors', () => expect(wrong(under('domain/'), under('nlp/', 'bot/'))).toEqual([]));
  test('nlp knows of the domain only its model', () =>
    expect(wrong(under('nlp/'), t => under('bot/', 'domain/')(t) && !t.startsWith('domain/model/'))).toEqual([]));
  test('the chat library is at its door alone', () =>
    expect(wrong(f => !f.startsWith('bot/doors/telegram/'), t => /^(grammy|@grammyjs\/)/.test(t))).toEqual([]));
  test('the speech library is in the hearing alone, its runtime there, at the net and in a room of its own', () => {
    expect(wrong(f => !f.startsWith('nlp/hear/'), t => /^(@xenova\/transformers|@huggingface\/)/.test(t))).toEqual([]);
    expect(wrong(f => !/^nlp\/(hear|likely\/net|runtime)\//.test(f), t => /^onnxruntime/.test(t))).toEqual([]);
  });
  test('SQLite is in the store alone', () => expect(wrong(f => !f.startsWith('domain/store/'), t => t === 'better-sqlite3')).toEqual([]));
  test('nothing imports a test or a fixture', () => expect(wrong(() => true, under('tests/'))).toEqual([]));
  test('no file is only a list of re-exports', () => {
    const barrels = all.filter(f => {
      const lines = readFileSync(join(root, f), 'utf8').split('\n').filter(l => l.trim() && !/^\s*(\/\/|\/?\*)/.test(l));
      return lines.length > 0 && lines.every(l => /^export\s+(\*|\{).*from/.test(l));
    });
    expect(barrels).toEqual([]);
  });
});

test('the top level holds the rooms, the guides and what tools need, and nothing left behind', () => {
  const belongs = new Set(['README.md', 'DEVELOPERS.md', 'package.json', 'package-lock.json', 'tsconfig.json', 'vitest.config.ts', 'bot', 'nlp', 'domain', 'tests', 'fixtures', 'node_modules']);
  expect(readdirSync(root).filter(name => !name.startsWith('.') && !belongs.has(name))).toEqual([]);
});
