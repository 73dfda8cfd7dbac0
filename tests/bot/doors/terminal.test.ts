import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { openTerminal } from '../../../bot/doors/terminal.ts';
import { seen, wrapped } from '../../../bot/doors/terminal-text.ts';
import { fakeService } from './page/fake-service.ts';

/** A terminal on two streams; `tty` makes them pass for a real one, 40 columns wide. */
function bench(tty = false) {
  const service = fakeService();
  const input = Object.assign(new PassThrough(), { isTTY: tty, setRawMode: () => input });
  const output = Object.assign(new PassThrough(), { isTTY: tty, columns: 40 });
  let text = '';
  output.setEncoding('utf8').on('data', d => { text += d; });
  const terminal = openTerminal({ service, input: input as never, output, now: () => '2026-03-14T09:05:00+01:00' });
  return { service, input, output, terminal, shown: () => text };
}
const said = (b: ReturnType<typeof bench>) => b.service.taken.map(m => m.text);

describe('piped', () => {
  test('each line is a note, taken and answered in its order; the end of the input ends it', async () => {
    const b = bench();
    b.input.end('Radiator is off.\r\n\n   \nFan belt came.\nwhich wheel\nlast line without an end');
    await b.terminal.done;
    expect(said(b)).toEqual(['Radiator is off.', 'Fan belt came.', 'which wheel', 'last line without an end']);
    expect(b.shown()).toBe('Noted: Radiator is off.\nNoted: Fan belt came.\nWhich wheel do you mean?\nNoted: last line without an end\n');
  });
  test('a message is handed over as the contract of doors says, each with a key of its own', async () => {
    const b = bench();
    b.input.end('a\na\n');
    await b.terminal.done;
    expect(b.service.taken[0]).toEqual({ key: expect.stringMatching(/^terminal:[0-9a-f-]{36}$/), door: 'terminal', chat: 'bench', at: '2026-03-14T09:05:00+01:00', text: 'a' });
    expect(new Set(b.service.taken.map(m => m.key)).size).toBe(2);
  });
  test('a number goes on as it is: the conversation knows what it answers, also when it was asked at another door', async () => {
    const b = bench();
    b.input.end('which wheel\n1\n');
    await b.terminal.done;
    expect(said(b)).toEqual(['which wheel', '1']);
  });
  test('one that could not be kept is tried again under the same key, and in the end given back in words', async () => {
    const b = bench();
    b.service.failNext(2);
    b.input.write('Oil drained.\n');
    await expect.poll(() => b.shown()).toBe('Noted: Oil drained.\n');
    b.service.failNext(100);
    b.input.end('Oil filled.\n');
    await b.terminal.done;
    expect(said(b)).toEqual(['Oil drained.']);
    expect(b.shown()).toContain('could not be kept; say it again: Oil filled.');
  });
  test('a slow answer holds its place', async () => {
    const b = bench();
    const take = b.service.take.bind(b.service);
    b.service.take = async m => { if (m.text === 'slow') await new Promise(later => setTimeout(later, 100)); return take(m); };
    b.input.end('slow\nquick\n');
    await b.terminal.done;
    expect(b.shown()).toBe('Noted: slow\nNoted: quick\n');
  });
  test('shows no prompt, no colour and nothing of other doors', async () => {
    const b = bench();
    b.service.elsewhere('telegram', 'Fan belt came.', 'Noted.');
    b.input.end('a\n');
    await b.terminal.done;
    expect(b.shown()).toBe('Noted: a\n');
  });
  test('"quit" leaves and is no note', async () => {
    const b = bench();
    b.input.write('a\nquit\n');
    await b.terminal.done;
    expect(said(b)).toEqual(['a']);
    expect(b.service.listeners()).toBe(0);
  });
});

describe('at a real terminal', () => {
  test('prompts, and shows what is said at other doors dimmed, with the line being typed put back', async () => {
    const b = bench(true);
    expect(b.shown()).toContain('bench> ');
    b.input.write('half a no');
    b.service.elsewhere('telegram', 'Fan belt came.', 'Noted: fan belt is here.');
    await expect.poll(() => b.shown()).toContain('\x1b[2mby chat: Fan belt came.\nNoted: fan belt is here.\x1b[22m\n');
    b.input.write('te\r');
    await expect.poll(() => said(b)).toEqual(['half a note']);
    b.terminal.close();
    await b.terminal.done;
  });
  test('a screen that does not know its width is taken to be 80 wide', async () => {
    const b = bench(true);
    b.output.columns = 0;
    b.service.elsewhere('page', 'word '.repeat(40).trim(), 'Noted.');
    await expect.poll(() => b.shown()).toContain('Noted.');
    const widths = b.shown().replace(/\x1b\[[\d;]*[A-Za-z]/g, '').split(/[\r\n]+/).map(l => l.length);
    expect(Math.max(...widths)).toBeGreaterThan(60);
    expect(Math.max(...widths)).toBeLessThan(80);
    b.terminal.close();
    await b.terminal.done;
  });
  test('a paste of several lines is a note each', async () => {
    const b = bench(true);
    b.input.write('Radiator is off.\rFan belt came.\rOil drained.\r');
    await expect.poll(() => said(b)).toEqual(['Radiator is off.', 'Fan belt came.', 'Oil drained.']);
    b.terminal.close();
    await b.terminal.done;
  });
  test('what took longer to work out is said when it is there', async () => {
    const b = bench(true);
    b.input.write('when will it be done\r');
    await expect.poll(() => b.shown()).toContain('Noted: when will it be done');
    b.service.tell({ ...b.service.exchanges[0]!, text: '', say: 'By Fri 5 Jun.' });
    expect(b.shown()).toContain('By Fri 5 Jun.\n');
    b.terminal.close();
    await b.terminal.done;
  });
  test('how far long hearing is stands before the prompt until it is done', async () => {
    const b = bench(true);
    b.service.progress('page:a', 'Hearing 3 min of talk… 40 %');
    await expect.poll(() => b.shown()).toContain('Hearing 3 min of talk… 40 %\x1b[22m bench> ');
    const before = b.shown().length;
    b.service.progress('page:a', 'Heard 3 min of talk.', { done: true });
    b.service.elsewhere('page', 'the radiator is off', 'Noted.');
    await expect.poll(() => b.shown().slice(before)).toContain('bench> ');
    expect(b.shown().slice(before)).not.toContain('Hearing');
    b.terminal.close();
    await b.terminal.done;
  });
  test.each([['Ctrl-D', '\x04'], ['Ctrl-C', '\x03']])('%s leaves', async (_name, key) => {
    const b = bench(true);
    b.input.write(key);
    await b.terminal.done;
    expect(said(b)).toEqual([]);
  });
});

describe('what is shown', () => {
  test('no note can steer the terminal', () => {
    expect(seen('a\x1b[2Jb\u009b31mc\x07\u202ed\te\r\nf')).toBe('a[2Jb31mcd e\nf');
  });
  test('lines are broken at spaces, under the first word of an item', () => {
    expect(wrapped('To get:\n• Thermostat housing gasket, for the radiator\n  under it', 30)).toBe('To get:\n• Thermostat housing gasket,\n  for the radiator\n  under it');
    for (const line of wrapped('word '.repeat(100), 40).split('\n')) expect(line.length).toBeLessThan(40);
    expect(wrapped('x'.repeat(100), 40)).toBe('x'.repeat(100));
    expect(wrapped('as it is '.repeat(30), Infinity)).toBe('as it is '.repeat(30));
  });
});
