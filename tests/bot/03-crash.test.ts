import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { afterAll, expect, test } from 'vitest';
import { openStore } from '../../domain/store/open.ts';

/**
 * Kills the program with SIGKILL at random moments while 2,000 notes are said, and starts it again each time, as a power cut would.
 * A kill can't tell FULL from NORMAL (the system's cache lives on), so the pragma itself is asserted on every connection by the store's tests.
 */
const NOTES = 2_000;
const dir = mkdtempSync(join(tmpdir(), 'crash-'));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

/** Runs the child from note `from`; kills it after so many printed numbers (0: never). Gives the last number that was answered. */
function run(from: number, killAfter: number): Promise<{ last: number; ended: boolean }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'crash-child.ts'), dir, String(from), String(NOTES)], { stdio: ['ignore', 'pipe', 'pipe'] });
    let last = from - 1;
    let seen = 0;
    let trouble = '';
    child.stderr.on('data', d => { trouble += d; });
    child.stdout.on('data', (data: Buffer) => {
      const numbers = data.toString().trim().split('\n').map(Number).filter(Number.isInteger);
      last = Math.max(last, ...numbers);
      seen += numbers.length;
      if (killAfter && seen >= killAfter) child.kill('SIGKILL');
    });
    child.on('close', (code, signal) => (code === 0 || signal === 'SIGKILL' ? resolve({ last, ended: code === 0 }) : reject(new Error(trouble))));
  });
}

test('2,000 notes, killed again and again: none lost, none doubled, the database whole', async () => {
  const seed = Date.now() | 0;
  const random = xoroshiro128plus(seed);
  let from = 0;
  let kills = 0;
  for (let ended = false; !ended;) {
    const result = await run(from, kills < 12 ? uniformInt(random, 1, 250) : 0);
    ended = result.ended;
    if (!ended) kills++;
    // What was answered last is said once more, as a door does that never saw the answer.
    from = Math.max(0, result.last);
  }
  expect(kills, `seed ${seed}`).toBeGreaterThan(5);
  const store = openStore(dir);
  expect(store.pragma('integrity_check')).toBe('ok');
  expect(store.get<{ n: number; k: number }>(`SELECT count(*) AS n, count(DISTINCT key) AS k FROM note`)).toEqual({ n: NOTES, k: NOTES });
  expect(store.get(`SELECT count(*) AS n FROM intake WHERE state <> 'done'`)).toEqual({ n: 0 });
  // Each of these notes says one thing; two entries of one note would be a note handled twice.
  expect(store.get(`SELECT count(*) AS n, count(DISTINCT note) AS k FROM entry`)).toEqual({ n: NOTES, k: NOTES });
  store.close();
}, 240_000);
