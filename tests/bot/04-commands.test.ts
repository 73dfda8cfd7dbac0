import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { receiver } from '../../bot/receive.ts';
import { createService } from '../../bot/serve.ts';
import { openShop } from '../../bot/shop.ts';

/** The commands as other programs call them: each a process of its own on one data folder. */
const root = resolve(import.meta.dirname, '../..');
let dir: string;
beforeAll(() => { dir = mkdtempSync(join(tmpdir(), 'commands-')); });
afterAll(() => rmSync(dir, { recursive: true, force: true }));

interface Ended { out: string; err: string; code: number }
const run = (name: string, args: string[], input = ''): Promise<Ended> => new Promise(done => {
  const child = execFile(process.execPath, ['--import', 'tsx', `bot/commands/${name}.ts`, ...args], { cwd: root, env: { ...process.env, PAWL_TZ: 'Europe/Paris' } },
    (error, out, err) => done({ out, err, code: error ? Number(error.code) : 0 }));
  child.stdin?.end(input);
});
const ask = async (words: string, at = '2026-05-01T10:00:00+02:00') => JSON.parse((await run('ask', ['--data', dir, '--at', at, '--json', words])).out);

describe('ask', () => {
  test('successive calls are one conversation: machine, open question, what undo strikes', async () => {
    await ask('switch to Heron');
    const noted = await ask("radiator's off, it's on the shelf");
    expect(noted.entries).toMatchObject([{ kind: 'fit', part: 'radiator', state: 'off', machine: 'Heron' }, { kind: 'stow', part: 'radiator', machine: 'Heron' }]);
    const open = await ask('what torque for a half inch coarse bolt, dry?');
    expect(open.answers).toMatchObject([{ kind: 'sum', of: 'torque', needs: ['grade'] }]);
    expect(open.question.text).toContain('grade');
    const closed = await ask('grade 8');
    // 106.4 lb-ft: J429 grade 8, 1/2-13, dry, K 0.20 (two published torque charts print 106).
    expect(closed.answers[0].results[0]).toMatchObject({ name: 'torque', unit: 'lb-ft' });
    expect(closed.answers[0].results[0].value).toBeCloseTo(106.4, 1);
    await ask('scratch that');
    expect((await ask('where is the radiator')).answers).toMatchObject([{ kind: 'where', where: null }]);
  });

  test('it works while the program runs on the same folder, and each sees what the other logs', async () => {
    const { log, deps } = openShop(dir, 'Europe/Paris');
    const service = createService({ deps, receiving: receiver({ store: log.store }) });
    const replies = await Promise.all(['need a fan belt', 'need a head gasket', 'need two plug leads'].map(w => ask(w)));
    expect(replies.map(r => r.entries[0].item)).toEqual(['fan belt', 'head gasket', expect.stringMatching(/^plug leads?$/)]);
    const here = await service.take({ key: 'test:here', door: 'page', chat: 'bench', at: '2026-05-01T11:00:00+02:00', text: 'what do I still need to buy' });
    expect(here.say).toContain('head gasket');
    expect(log.store.get(`SELECT count(*) AS n, count(DISTINCT key) AS k FROM note WHERE text LIKE 'need%'`)).toEqual({ n: 3, k: 3 });
    await service.close();
    log.store.close();
  });

  test.each([[['--at', 'yesterday', 'x'], '--at must be a moment'], [['--nope', 'x'], 'Use: npm run'], [[], 'Use: npm run']])('%j is refused with a sentence', async (args, sentence) => {
    const { err, code } = await run('ask', args);
    expect(err).toContain(sentence);
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(code).toBe(2);
  });
});

describe('understand', () => {
  test('answers a line for a line, in order, a bad one too', async () => {
    const lines = [
      JSON.stringify({ id: 'one', at: '2026-05-01T10:00:00+02:00', text: 'Fan belt is tight.' }), 'no json',
      JSON.stringify({ id: 'three', at: '2026-05-01T10:00:00+02:00', text: 'where is the jack?' }),
    ];
    const { out } = await run('understand', [], `${lines.join('\n')}\n`);
    const read = out.trim().split('\n').map(l => JSON.parse(l));
    expect(read).toHaveLength(3);
    expect(read[0]).toMatchObject({ id: 'one', entries: [{ kind: 'fit', part: 'fan belt', state: 'tight' }] });
    expect(read[1]).toMatchObject({ entries: [], asks: [] });
    expect(read[2]).toMatchObject({ id: 'three', asks: [{ kind: 'where', part: 'jack' }] });
  });
});

test('the sample shop goes into an empty folder only', async () => {
  const empty = mkdtempSync(join(tmpdir(), 'sample-'));
  expect((await run('sample', ['--data', empty])).out).toContain('120 notes');
  const again = await run('sample', ['--data', empty]);
  expect(again.code).toBe(2);
  expect(again.err).toContain('already');
  const reread = await run('reread', ['--data', empty]);
  expect(reread.out).toMatch(/\d+ notes read again, 0 read differently/);
  rmSync(empty, { recursive: true, force: true });
});
