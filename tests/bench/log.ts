import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { answer, type LogAsk } from '../../domain/answers/answer.ts';
import { openLog, saveSnapshot, type Log } from '../../domain/log/keeper.ts';
import { record } from '../../domain/log/record.ts';
import { keepNote } from '../../domain/store/notes.ts';
import { openStore } from '../../domain/store/open.ts';
import { madeUpShop, type MadeUpNote } from './log/made-up-shop.ts';
import { quantile, spread, timed } from './log/measure.ts';

/**
 * How the log bears its years: `npm run bench:log` for shops of 10,000 and 100,000 notes, `-- --full` for 1,000,000 too. For each: cold
 * start in a process of its own, one turn's part in the store (keep, record, answer), every answer kind, memory and file size; and beside
 * the turn the bare cost of one durable insert on the same disk in the same run.
 */
const ASKS: LogAsk[] = [
  { kind: 'blocked', part: 'left radiator' }, { kind: 'blocked', part: 'Heron' }, { kind: 'buy' }, { kind: 'next' }, { kind: 'where', part: 'rear axle' }, { kind: 'wasHow', part: 'left magneto' },
  { kind: 'provisional' }, { kind: 'due' }, { kind: 'history', part: 'front governor' }, { kind: 'history', from: '2016-02-01', to: '2016-02-01' }, { kind: 'spent' }, { kind: 'spent', part: 'upper belt' },
  { kind: 'timeSpent', part: 'winch' }, { kind: 'finish' }, { kind: 'cheapest', item: 'lower hose' }, { kind: 'forecast', for: 'paint the hood' }, { kind: 'picture', part: 'left valve' },
];
const TURNS = 300;
const sizeOf = (dir: string): number => readdirSync(dir).reduce((sum, f) => sum + statSync(join(dir, f)).size, 0);
const here = fileURLToPath(import.meta.url);

function measure(notes: number): void {
  const dir = mkdtempSync(join(tmpdir(), 'pawl-bench-'));
  try {
    const last = fill(dir, notes);
    console.log(`\n${notes.toLocaleString('en')} notes`);
    console.log(`  file          ${(sizeOf(dir) / 1e6).toFixed(1)} MB, ${Math.round(sizeOf(dir) / notes)} bytes a note`);
    console.log(`  cold start    ${inOwnProcess(dir)}`);
    const log = openLog(openStore(dir));
    turns(log, notes, dir);
    for (const ask of ASKS) console.log(`  ${`${ask.kind} ${'part' in ask && ask.part ? ask.part : 'item' in ask ? ask.item : ''}`.padEnd(26)}${spread(timed(40, () => ask1(log, ask, last.at), 2_000))}`);
    log.store.close();
  } finally { rmSync(dir, { recursive: true, force: true }); }
}

/** Said through the same door as in the product, many notes a transaction. */
function fill(dir: string, notes: number): MadeUpNote {
  const log = openLog(openStore(dir));
  let last: MadeUpNote | undefined;
  let batch: MadeUpNote[] = [];
  const start = Date.now();
  const keep = (): void => { log.store.transaction(() => batch.forEach(n => say(log, n))); batch = []; };
  for (const note of madeUpShop(notes)) {
    batch.push(last = note);
    if (batch.length === 1_000) keep();
  }
  keep();
  console.log(`  (${notes} notes written in ${((Date.now() - start) / 1000).toFixed(0)} s)`);
  saveSnapshot(log);
  log.store.close();
  return last!;
}

function say(log: Log, made: MadeUpNote): void {
  const { note } = keepNote(log.store, { key: made.key, at: made.at, door: 'bench', chat: 'bench', text: made.text, machine: made.machine });
  record(log, note, made.entries);
}

const ask1 = (log: Log, ask: LogAsk, at: string): unknown => answer(log.shop, ask, { at, zone: 'UTC' }, { past: log.past, machine: 'Heron', mileRate: 0.5 });

/** Turns, and as many bare durable inserts into a table of two columns on the same disk right after. */
function turns(log: Log, notes: number, dir: string): void {
  const more = [...madeUpShop(TURNS, notes)];
  // A finish is simulated outside the turn, and sent when it is ready.
  const inTurn = ASKS.filter(ask => ask.kind !== 'finish');
  const times = timed(TURNS, i => {
    log.store.transaction(() => say(log, more[i]!));
    ask1(log, inTurn[i % inTurn.length]!, more[i]!.at);
  });
  const bare = openStore(join(dir, 'bare'));
  const inserts = timed(TURNS, i => { bare.run('INSERT INTO setting (name, value) VALUES (?, ?)', String(i), more[i]!.text); });
  bare.close();
  console.log(`  one turn      ${spread(times)}  max ${quantile(times, 1).toFixed(0)} ms`);
  console.log(`  bare insert   ${spread(inserts)}`);
}

function inOwnProcess(dir: string): string {
  return execFileSync(process.execPath, ['--import', 'tsx', here, '--cold', dir], { encoding: 'utf8' }).trim();
}

/** Opens the log and answers one question; the time of the process itself (Node, the compiler) is not in it. */
function cold(dir: string): void {
  const before = process.memoryUsage().rss;
  const start = performance.now();
  const log = openLog(openStore(dir));
  const opened = performance.now() - start;
  ask1(log, { kind: 'blocked', part: 'left radiator' }, '2026-01-01T08:00:00+00:00');
  const answered = performance.now() - start;
  const rss = process.memoryUsage().rss;
  console.log(`${opened.toFixed(0)} ms to open, ${answered.toFixed(0)} ms to the first answer; memory ${(rss / 1e6).toFixed(0)} MB, of it for the shop ${((rss - before) / 1e6).toFixed(0)} MB`);
}

if (process.argv[2] === '--cold') cold(process.argv[3]!);
else for (const notes of [10_000, 100_000, ...(process.argv.includes('--full') ? [1_000_000] : [])]) measure(notes);
