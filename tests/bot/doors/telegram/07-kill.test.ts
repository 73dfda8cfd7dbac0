import { fork, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openStore } from '../../../../domain/store/open.ts';
import { OWNER } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let dir: string;
let child: ChildProcess | undefined;
beforeEach(async () => { cloud = await startLoopback(); dir = mkdtempSync(join(tmpdir(), 'pawl-kill-')); });
afterEach(async () => { child?.kill('SIGKILL'); await cloud.close(); rmSync(dir, { recursive: true, force: true }); });

const start = async () => {
  child = fork(join(import.meta.dirname, 'kill-child.ts'), [dir, cloud.url, cloud.token], { execArgv: ['--import', 'tsx'], stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  await new Promise(open => child!.once('message', open));
};
const kill = async () => {
  const gone = new Promise(exit => child!.once('exit', exit));
  child!.kill('SIGKILL');
  await gone;
};

test('killed again and again while notes come in: none lost, none doubled, in order', async () => {
  const ROUNDS = 6;
  const NOTES = 60;
  const said: string[] = [];
  const say = () => { said.push(`note ${said.length + 1}`); cloud.sendText(OWNER, said.at(-1)!); };
  for (let round = 0; round < ROUNDS; round++) {
    await start();
    // Some rounds also die in an answer that has had its effect but never arrived.
    if (round % 2) cloud.fault('getUpdates', 'reset-after');
    const die = round * 7 + Math.floor(Math.random() * 40);
    for (let i = 0; i < NOTES; i++) {
      say();
      if (i === die) await kill();
      await new Promise(next => setTimeout(next, 1));
    }
    if (child?.signalCode === null) await kill();
  }
  cloud.clearFaults();
  await start();
  say();
  const store = openStore(dir);
  const taken = () => store.all<{ name: string; value: string }>("SELECT name, value FROM setting WHERE name LIKE 'taken %'");
  await until(taken, t => t.length >= said.length, 30_000);
  await until(cloud.unconfirmed, u => u.length === 0);
  await kill();
  expect(taken().filter(t => t.value !== '1')).toEqual([]);
  const texts = store.all<{ body: string }>('SELECT body FROM intake ORDER BY seq').map(r => (JSON.parse(r.body) as { message: { text: string } }).message.text);
  expect(texts).toEqual(said);
  expect(store.pragma('integrity_check')).toBe('ok');
  store.close();
});
