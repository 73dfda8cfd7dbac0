import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { Reading } from '../../domain/model/reading.ts';
import { decodeSound } from '../../nlp/hear/decode/decode.ts';
import { isRefusal } from '../../nlp/hear/decode/sound.ts';
import { leansOn } from '../../nlp/hear/lean.ts';
import { Listener, type StageTimes } from '../../nlp/hear/listen.ts';
import { BUILT_IN } from '../../nlp/hear/model-files.ts';
import { Whisper } from '../../nlp/hear/model.ts';
import { search } from '../../nlp/hear/search.ts';
import { buildWordTree } from '../../nlp/hear/word-tree.ts';
import { readNote } from '../../nlp/read.ts';
import { humanClips, HUMAN, wordErrors, type HumanClip } from '../nlp/hear/human-clips.ts';
import { NOISE_KINDS, shopNoise, toWav, withNoise } from '../nlp/hear/shop-noise.ts';

/**
 * How well and how fast notes are heard: time by stage, memory, errors against other notes' words, and another recogniser on
 * the same clips in the same run. Skips what isn't installed and says so. `npm run bench:hearing -- quick` leaves noise out.
 */
const SHARED = fileURLToPath(new URL('../../../shared/', import.meta.url));
const quick = process.argv.includes('quick');

interface Note { id: string; at?: string; known?: { machines?: string[]; parts?: string[] } }
interface Clip { id: string; file: string }
type Heard = { id: string; raw?: string; text?: string };

const lines = <T>(file: string): T[] => readFileSync(file, 'utf8').trim().split('\n').map((line) => JSON.parse(line) as T);
const median = (values: number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
const show = (ms: number) => `${ms.toFixed(0)} ms`;

async function samplesOf(bytes: Uint8Array): Promise<Float32Array> {
  const sound = await decodeSound(bytes);
  if (isRefusal(sound)) throw new Error(sound.why);
  return sound.samples;
}

/** The recogniser alone: the likeliest piece each time, no names, no bonus, no mending. */
async function alone(whisper: Whisper, bytes: Uint8Array): Promise<string> {
  const samples = await samplesOf(bytes);
  const found = await search(whisper, await whisper.hearSound(whisper.features.measure(samples)), [whisper.ids.start, ...whisper.ids.after],
    { readings: 1, bonus: 0, expected: buildWordTree([], whisper.encode), most: Math.ceil((7 * samples.length) / 16_000) + 12 });
  return whisper.text(found.pieces).trim();
}

function score(label: string, heard: Heard[]): void {
  const dir = mkdtempSync(join(tmpdir(), 'hearing-'));
  const file = join(dir, 'heard.jsonl');
  writeFileSync(file, heard.map((h) => JSON.stringify(h)).join('\n'));
  const said = execFileSync(process.execPath, [join(SHARED, 'speech/wer.mjs'), join(SHARED, 'contract/dev-notes.jsonl'), file], { encoding: 'utf8' });
  console.log(`  ${label.padEnd(34)} ${said.trim()}`);
  rmSync(dir, { recursive: true });
}

/** What a heard note would write down, and whether the person is asked first. */
interface Noted extends Pick<Reading, 'entries' | 'asks'> { id: string; asked: boolean }

/** What goes into the log unasked: how much of it is false, and how often the person is asked for that. */
function scoreFacts(noted: Noted[]): void {
  const dir = mkdtempSync(join(tmpdir(), 'hearing-'));
  const [gold, read] = [join(dir, 'gold.jsonl'), join(dir, 'read.jsonl')];
  const ids = new Set(noted.map(({ id }) => id));
  writeFileSync(gold, lines<Note>(join(SHARED, 'contract/dev-notes.jsonl')).filter(({ id }) => ids.has(id)).map((note) => JSON.stringify(note)).join('\n'));
  const scored = (some: Noted[]) => {
    writeFileSync(read, some.map((one) => JSON.stringify(one)).join('\n'));
    return JSON.parse(execFileSync(process.execPath, [join(SHARED, 'contract/score.mjs'), gold, read, '--json'], { encoding: 'utf8' })) as { entryF1: number; falseFactRate: number };
  };
  const logged = noted.filter(({ asked }) => !asked);
  const facts = logged.flatMap(({ entries }) => entries).filter(({ kind }) => kind !== 'remark').length;
  console.log(`  asked about ${noted.length - logged.length} of ${noted.length}; of ${facts} facts logged unasked ${scored(logged).falseFactRate} false; entry F1 of all ${scored(noted).entryF1}`);
  rmSync(dir, { recursive: true });
}

/** Synthetic voices prove the pipe, not people: they say nothing of a shop, wind, or half-finished words. */
async function spokenNotes(listener: Listener, whisper: Whisper): Promise<void> {
  const index = join(SHARED, 'speech/index.jsonl');
  if (!existsSync(index)) return console.log('spoken notes: skipped, there are none beside the repository');
  const notes = new Map(lines<Note>(join(SHARED, 'contract/dev-notes.jsonl')).map((note) => [note.id, note]));
  for (const ratio of quick ? [undefined] : [undefined, 20, 10, 5]) {
    console.log(`spoken notes (synthetic voices), ${ratio === undefined ? 'clean' : `shop noise at ${ratio} dB`}`);
    const without: Heard[] = [];
    const raw: Heard[] = [];
    const withAll: Heard[] = [];
    const took: Took[] = [];
    const noted: Noted[] = [];
    for (const [i, { id, file }] of lines<Clip>(index).entries()) {
      const clean = readFileSync(join(SHARED, 'speech', file));
      const bytes = ratio === undefined ? clean : toWav(withNoise(await samplesOf(clean), ratio, 100 * ratio + i));
      const known = notes.get(id)?.known;
      const names = [...(known?.machines ?? []), ...(known?.parts ?? [])];
      const heard = await listener.listen(bytes, names);
      const begun = performance.now();
      const reading = readNote(heard.text, { at: notes.get(id)?.at ?? new Date().toISOString(), machines: known?.machines ?? [], parts: known?.parts ?? [] });
      const read = performance.now() - begun;
      took.push({ seconds: heard.seconds, ms: heard.tookMs + read, times: { ...listener.times, read } });
      noted.push({ id, entries: reading.entries, asks: reading.asks, asked: heard.doubtful || leansOn(heard.text, reading, { ...heard, names }).length > 0 });
      raw.push({ id, text: heard.raw });
      withAll.push({ id, text: heard.text });
      without.push({ id, text: await alone(whisper, bytes) });
    }
    score('recogniser alone', without);
    score('with names, trade words, readings', raw);
    score('and mended', withAll);
    scoreFacts(noted);
    reportTimes(took);
  }
}

/** From the end of a note to its entries. */
interface Took { seconds: number; ms: number; times: StageTimes & { read: number } }

function reportTimes(took: Took[]): void {
  const about = (from: number, to: number) => took.filter(({ seconds }) => seconds >= from && seconds <= to);
  for (const [label, some] of [['6–8 s', about(6, 8)], ['9–11 s', about(9, 11)]] as const) {
    const stage = (name: keyof Took['times']) => `${name} ${show(median(some.map(({ times }) => times[name])))}`;
    console.log(`  ${label}: p50 ${show(median(some.map(({ ms }) => ms)))} of ${some.length} (${(['decode', 'detect', 'transcribe', 'mend', 'read'] as const).map(stage).join(', ')})`);
  }
}

/** Nobody speaks: no words may come. */
async function noise(listener: Listener): Promise<void> {
  let words = 0;
  let seconds = 0;
  for (const kind of NOISE_KINDS) {
    for (const [i, level] of [0.02, 0.2].entries()) {
      for (let part = 0; part < 2; part++) {
        const heard = await listener.listen(toWav(shopNoise(kind, 22, 10 * i + part, level)), []);
        seconds += heard.seconds;
        const count = heard.raw.split(/\s+/).filter(Boolean).length;
        if (count) console.log(`  ${kind} at ${level}: ${heard.raw}`);
        words += count;
      }
    }
  }
  console.log(`noise and silence: ${words} words from ${(seconds / 60).toFixed(1)} min`);
}

/**
 * Another recogniser's own model on the same clips: its batch command, which adapts to each whole clip and does better than
 * its live one. Transcripts by clip name; `undefined` when it isn't installed.
 */
function otherRecogniser(clips: HumanClip[]): Map<string, string> | undefined {
  const model = '/usr/share/pocketsphinx/model/en-us';
  if (!existsSync(model) || spawnSync('pocketsphinx_batch', ['-help']).error) return undefined;
  const dir = mkdtempSync(join(tmpdir(), 'hearing-'));
  for (const { name, bytes } of clips) writeFileSync(join(dir, `${name}.wav`), bytes);
  writeFileSync(join(dir, 'clips'), clips.map(({ name }) => name).join('\n'));
  spawnSync('pocketsphinx_batch', ['-adcin', 'yes', '-adchdr', '44', '-cepdir', dir, '-cepext', '.wav', '-ctl', join(dir, 'clips'), '-hyp', join(dir, 'heard'),
    '-hmm', `${model}/en-us`, '-lm', `${model}/en-us.lm.bin`, '-dict', `${model}/cmudict-en-us.dict`]);
  const heard = readFileSync(join(dir, 'heard'), 'utf8').split('\n').flatMap((line) => /^(.*?) ?\((\S+) -?\d+\)$/.exec(line) ?? []);
  rmSync(dir, { recursive: true });
  return new Map(Array.from({ length: heard.length / 3 }, (_, i) => [heard[3 * i + 2]!, heard[3 * i + 1]!]));
}

async function humanSpeech(listener: Listener): Promise<void> {
  const clips = humanClips();
  if (clips.length === 0) return console.log(`human speech: skipped, ${HUMAN} is not there (Debian: pocketsphinx-testdata)`);
  const words = clips.reduce((sum, { said }) => sum + wordErrors(said, ''), 0);
  const show = (who: string, errors: number, ms: number) => console.log(`  ${who.padEnd(14)} ${((100 * errors) / words).toFixed(1)} % of ${words} words wrong, ${ms.toFixed(0)} ms in all`);
  console.log(`human speech, ${clips.length} clips`);
  let errors = 0;
  let ms = 0;
  for (const { bytes, said } of clips) {
    const heard = await listener.listen(bytes, []);
    errors += wordErrors(said, heard.text);
    ms += heard.tookMs;
  }
  show('ours', errors, ms);
  const begun = performance.now();
  const other = otherRecogniser(clips);
  if (!other) return console.log('  pocketsphinx is not installed: not compared (Debian: pocketsphinx, pocketsphinx-en-us)');
  show('pocketsphinx', clips.reduce((sum, { name, said }) => sum + wordErrors(said, other.get(name) ?? ''), 0), performance.now() - begun);
}

/** The whole program with its thread and its flags, as other programs call it: from a line sent to its answer, reading included, one note at a time; and the most memory it took. */
async function asCalled(): Promise<void> {
  const index = join(SHARED, 'speech/index.jsonl');
  if (!existsSync(index) || !existsSync('/proc/self/status')) return console.log('npm run hear: not measured (no recordings, or no /proc)');
  const notes = new Map(lines<Note>(join(SHARED, 'contract/dev-notes.jsonl')).map((note) => [note.id, note]));
  const { scripts } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { scripts: { hear: string } };
  const flags = scripts.hear.split(' ').slice(1, -1); // as npm run hear has them, without its shell
  const hear = spawn(process.execPath, [...flags, 'bot/commands/hear.ts', '--jsonl'], { cwd: fileURLToPath(new URL('../../', import.meta.url)), stdio: ['pipe', 'pipe', 'inherit'] });
  const answers = createInterface({ input: hear.stdout })[Symbol.asyncIterator]();
  const took: { seconds: number; ms: number }[] = [];
  for (const { id, file } of lines<Clip>(index)) {
    const { at, known } = notes.get(id)!;
    const begun = performance.now();
    hear.stdin.write(`${JSON.stringify({ file: join(SHARED, 'speech', file), at, known })}\n`);
    const { seconds } = JSON.parse((await answers.next()).value as string) as { seconds: number };
    took.push({ seconds, ms: performance.now() - begun });
  }
  const warm = took.slice(1); // the first loads the model
  const about = (from: number, to: number) => warm.filter(({ seconds }) => seconds >= from && seconds <= to).map(({ ms }) => ms);
  // It is looked at while it waits for more, for a program that has ended has no memory.
  const peak = Math.round(Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${hear.pid}/status`, 'utf8'))![1]) / 1024);
  console.log(`npm run hear over ${took.length} recordings, one at a time: 6–8 s p50 ${show(median(about(6, 8)))}, 9–11 s p50 ${show(median(about(9, 11)))}, all in; peak memory ${peak} MB`);
  hear.stdin.end();
  await once(hear, 'exit');
}

const listener = await Listener.load(BUILT_IN);
const whisper = await Whisper.load(BUILT_IN);
await listener.listen(toWav(shopNoise('hum', 1, 1)), []);
await humanSpeech(listener);
await spokenNotes(listener, whisper);
if (!quick) await noise(listener);
await listener.close();
await whisper.close();
await asCalled();
