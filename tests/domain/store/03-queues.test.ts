import { describe, expect, it } from 'vitest';
import { intake } from '../../../domain/store/intake.ts';
import { keepNote, noteCount } from '../../../domain/store/notes.ts';
import { inOneTransaction, openStore, type Store } from '../../../domain/store/open.ts';
import { outbox } from '../../../domain/store/outbox.ts';
import { backOff } from '../../../domain/store/queue.ts';
import { aNote } from './tools/fresh.ts';

const put = (store: Store, key: string, chat = 'a', door = 'telegram'): number => intake.put(store, { key, chat, door, at: '2026-03-04T15:20:00-05:00', body: `{"key":"${key}"}` }).seq;

describe('a durable queue', () => {
  it('takes a message once under its key', () => {
    const store = openStore(':memory:');
    const first = intake.put(store, { key: 'm:1', chat: 'a', door: 't', at: 'now', body: 'one' });
    expect(first.fresh).toBe(true);
    expect(intake.put(store, { key: 'm:1', chat: 'a', door: 't', at: 'now', body: 'two' })).toEqual({ seq: first.seq, fresh: false });
    expect(intake.byKey(store, 'm:1')!.body).toBe('one');
  });

  it('gives messages out in the order of their chat', () => {
    const store = openStore(':memory:');
    const seqs = ['1', '2', '3'].map(k => put(store, k));
    for (const seq of seqs) {
      expect(intake.next(store, 0)!.seq).toBe(seq);
      expect(intake.done(store, seq)).toBe(true);
    }
    expect(intake.next(store, 0)).toBeUndefined();
  });

  it('holds back a chat whose message backs off, and no other', () => {
    const store = openStore(':memory:');
    const a1 = put(store, 'a1', 'a');
    put(store, 'a2', 'a');
    const b1 = put(store, 'b1', 'b');
    intake.again(store, a1, 'no room on the disk', 1_000);
    expect(intake.next(store, 999)!.seq).toBe(b1);
    intake.done(store, b1);
    expect(intake.next(store, 999)).toBeUndefined();
    expect(intake.nextDue(store)).toBe(1_000);
    expect(intake.next(store, 1_000)).toMatchObject({ seq: a1, tries: 1, error: 'no room on the disk' });
  });

  it('parks what will not go, shows it, lets the chat go on, and can take it up again', () => {
    const store = openStore(':memory:');
    const [one, two] = [put(store, '1'), put(store, '2')];
    intake.park(store, one, 'unreadable');
    expect(intake.next(store, 0)!.seq).toBe(two);
    expect(intake.parked(store)).toMatchObject([{ seq: one, error: 'unreadable', state: 'parked' }]);
    intake.revive(store, one);
    expect(intake.next(store, 0)!.seq).toBe(one);
  });

  it('serves only the doors that are asked for', () => {
    const store = openStore(':memory:');
    put(store, '1', 'a', 'terminal');
    const page = put(store, '2', 'b', 'page');
    expect(intake.next(store, 0, ['page', 'telegram'])!.seq).toBe(page);
    expect(intake.next(store, 0, ['telegram'])).toBeUndefined();
  });

  it('marks a message done once: a second worker learns that it came too late, and what it did is undone', () => {
    const store = openStore(':memory:');
    const seq = put(store, '1');
    expect(intake.done(store, seq)).toBe(true);
    const late = (): void => inOneTransaction(store, () => { keepNote(store, aNote()); if (!intake.done(store, seq)) throw new Error('handled elsewhere'); });
    expect(late).toThrow('handled elsewhere');
    expect(noteCount(store)).toBe(0);
  });

  it('keeps incoming and outgoing apart', () => {
    const store = openStore(':memory:');
    put(store, '1');
    expect(outbox.next(store, 0)).toBeUndefined();
  });

  it('waits longer after each failure, but never more than five minutes', () => {
    expect([1, 2, 3, 4].map(backOff)).toEqual([2_000, 4_000, 8_000, 16_000]);
    expect(backOff(40)).toBe(300_000);
  });
});
