import { describe, expect, it } from 'vitest';
import { readChat, writeChat } from '../../../domain/store/chats.ts';
import { openStore } from '../../../domain/store/open.ts';
import { markSaid, putOff, reminderMark, stopReminder } from '../../../domain/store/reminders.ts';
import { MILE_RATE, mileRate, readSetting, writeSetting } from '../../../domain/store/settings.ts';
import { keepSnapshot, newestSnapshot } from '../../../domain/store/snapshots.ts';

describe('a chat', () => {
  it('is at no machine and has nothing open until it says so', () => expect(readChat(openStore(':memory:'), 'a')).toEqual({}));

  it('remembers what the next turn needs, and forgets what is left out', () => {
    const store = openStore(':memory:');
    const state = { machine: 'Heron', open: { text: 'Which side?', choices: ['left', 'right'] }, page: { at: 10 }, kept: { torque: 45 } };
    writeChat(store, 'a', state);
    expect(readChat(store, 'a')).toEqual(state);
    writeChat(store, 'a', { machine: 'winch' });
    expect(readChat(store, 'a')).toEqual({ machine: 'winch' });
  });
});

describe('settings', () => {
  it('are words by name', () => {
    const store = openStore(':memory:');
    expect(readSetting(store, 'quiet from')).toBeUndefined();
    writeSetting(store, 'quiet from', '21:00');
    writeSetting(store, 'quiet from', '22:00');
    expect(readSetting(store, 'quiet from')).toBe('22:00');
    writeSetting(store, 'quiet from', undefined);
    expect(readSetting(store, 'quiet from')).toBeUndefined();
  });

  it('have the way cost nothing until a rate is said', () => {
    const store = openStore(':memory:');
    expect(mileRate(store)).toBe(0);
    writeSetting(store, MILE_RATE, '0.67');
    expect(mileRate(store)).toBe(0.67);
    writeSetting(store, MILE_RATE, 'a lot');
    expect(mileRate(store)).toBe(0);
  });
});

describe('an unasked word', () => {
  it('is said once', () => {
    const store = openStore(':memory:');
    expect([markSaid(store, 'late:1', 'mon'), markSaid(store, 'late:1', 'tue')]).toEqual([true, false]);
    expect(reminderMark(store, 'late:1')).toEqual({ key: 'late:1', saidAt: 'mon', stopped: false });
  });

  it('is said once more when it was put off, and never when stopped', () => {
    const store = openStore(':memory:');
    markSaid(store, 'late:1', 'mon');
    putOff(store, 'late:1', 'wed');
    expect(reminderMark(store, 'late:1')!.putOffUntil).toBe('wed');
    expect([markSaid(store, 'late:1', 'wed'), markSaid(store, 'late:1', 'thu')]).toEqual([true, false]);
    stopReminder(store, 'late:1');
    putOff(store, 'late:1', 'fri');
    expect(markSaid(store, 'late:1', 'fri')).toBe(false);
    expect(reminderMark(store, 'late:1')!.stopped).toBe(true);
  });
});

describe('snapshots', () => {
  it('are found by their form, and only the newest two are kept', () => {
    const store = openStore(':memory:');
    for (const entry of [1, 2, 3]) keepSnapshot(store, { entry, form: entry === 3 ? 'b' : 'a', body: Buffer.from([entry]) });
    expect(newestSnapshot(store, 'a')).toMatchObject({ entry: 2 });
    expect(newestSnapshot(store, 'b')).toMatchObject({ entry: 3 });
    expect(newestSnapshot(store, 'c')).toBeUndefined();
    expect(store.get('SELECT count(*) AS n FROM snapshot')).toEqual({ n: 2 });
  });
});
