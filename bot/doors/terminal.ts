import { randomUUID } from 'node:crypto';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { setTimeout as pause } from 'node:timers/promises';
import { DateTime } from 'luxon';
import { BENCH } from '../incoming.ts';
import type { Service, Talk } from '../service.ts';
import { seen, wrapped } from './terminal-text.ts';

const PROMPT = 'bench> ';
/** Words that leave the terminal and are no note. */
const LEAVE = /^(quit|exit)$/i;
const BY: Record<string, string> = { telegram: 'by chat', page: 'on the page', command: 'by command' };
const TRIES = 4;

export interface TerminalOptions {
  service: Service;
  input: Readable;
  output: Writable;
  /** The moment now, ISO with the offset of the shop's zone; without it the computer's own. */
  now?: () => string;
}
interface Terminal {
  /** Resolves when the input has ended (or `close` was called) and every line of it is answered. */
  done: Promise<void>;
  close(): void;
}

/**
 * The conversation at the terminal: each line is a note, answered in its order, so that pasted or piped lines are a note each.
 * Where it is a real terminal there is a prompt, and what is said at other doors shows dimmed between the lines.
 */
export function openTerminal({ service, input, output, now = () => DateTime.now().startOf('second').toISO({ suppressMilliseconds: true }) }: TerminalOptions): Terminal {
  const screen = output as Partial<{ isTTY: boolean; columns: number }>;
  const live = Boolean((input as { isTTY?: boolean }).isTTY && screen.isTTY);
  const dim = (text: string) => (live && !process.env.NO_COLOR ? `\x1b[2m${text}\x1b[22m` : text);
  const lines = createInterface({ input, output: live ? output : undefined, terminal: live, prompt: PROMPT, crlfDelay: Infinity, historySize: 200 });
  let closed = false;

  /** Prints above the line that is being typed, which is put back under it. */
  const print = (text: string) => {
    output.write(`${live ? '\r\x1b[K' : ''}${text}\n`);
    if (live && !closed) lines.prompt(true);
  };
  const say = (text: string, look = (t: string) => t) => print(look(wrapped(seen(text), live ? screen.columns || 80 : Infinity)));

  const turn = async (text: string): Promise<void> => {
    const m = { key: `terminal:${randomUUID()}`, door: 'terminal', chat: BENCH, at: now(), text } as const;
    for (let tries = 1; ; tries++) {
      try { say((await service.take(m)).say); return; } catch {
        if (tries < TRIES) { await pause(100 * 2 ** tries); continue; }
        say(`That could not be kept; say it again: ${text}`);
        return;
      }
    }
  };

  const heard = (t: Talk) => {
    // Work that took longer comes back under its note, without the note's words.
    // A word unasked stands for itself.
    if (t.door === 'terminal' || t.door === 'unasked') { if (!t.text) say(t.say); return; }
    if (live) say(`${BY[t.door] ?? t.door}: ${t.text}\n${t.say}`, dim);
  };
  const stopHearing = service.onTalk(t => { progress(''); heard(t); });
  /** How far something long is stands before the prompt, where the next word of it takes its place. */
  const progress = (text: string) => {
    lines.setPrompt(text ? `${dim(text)} ${PROMPT}` : PROMPT);
    if (live && text && !closed) lines.prompt(true);
  };
  const stopProgress = service.onProgress(p => progress(p.done ? '' : p.text));

  let turns = Promise.resolve();
  lines.on('line', line => {
    if (LEAVE.test(line.trim())) { lines.close(); return; }
    if (!line.trim()) { if (live) lines.prompt(); return; }
    // After the input was closed readline may still give lines that it held; they were said, so they are kept.
    turns = turns.then(() => turn(line));
  });
  lines.on('SIGINT', () => lines.close());
  const done = new Promise<void>(ended => {
    lines.on('close', () => {
      closed = true;
      void turns.then(() => { stopHearing(); stopProgress(); if (live) output.write('\n'); ended(); });
    });
  });
  if (live) lines.prompt();
  return { done, close: () => lines.close() };
}
