import fc from 'fast-check';
import { describe, expect, it, onTestFinished } from 'vitest';
import { appendEntry } from '../../../domain/store/entries.ts';
import { allNotes, keepNote, keepUnread, lastNotes, noteById, noteByKey, noteCount, unreadOf } from '../../../domain/store/notes.ts';
import { openStore } from '../../../domain/store/open.ts';
import { aNote, freshDir } from './tools/fresh.ts';

describe('notes', () => {
  it('are kept word for word under the identity that their door gave them', () => {
    const store = openStore(':memory:');
    const { note, fresh } = keepNote(store, aNote({ machine: 'Heron' }));
    expect(fresh).toBe(true);
    expect(noteById(store, note.id)).toEqual({ id: 1, key: 'm:1:1', at: '2026-03-04T15:20:00-05:00', door: 'terminal', chat: 'bench', text: 'Radiator is off.', machine: 'Heron' });
  });

  it('are kept once however often they come', () => {
    const store = openStore(':memory:');
    const first = keepNote(store, aNote());
    const again = keepNote(store, aNote({ text: 'something else under the same key' }));
    expect(again).toEqual({ note: first.note, fresh: false });
    expect(noteCount(store)).toBe(1);
  });

  const LONE = String.fromCharCode(0xd83d);
  it.each([['NUL', 'a\u0000b'], ['a lone surrogate', `fan ${LONE} belt`], ['the other half alone', `\udc00`], ['right to left', 'a\u202eb\u202c'], ['emoji', '🛠️🚜'], ['nothing', ''], ['64 KiB', 'é'.repeat(65_536)]])(
    'give %s back as it came', (_, text) => {
      const store = openStore(':memory:');
      const { note } = keepNote(store, aNote({ text }));
      keepUnread(store, note.id, [text]);
      expect(noteById(store, note.id)!.text).toBe(text);
      expect(unreadOf(store, note.id)).toEqual([text]);
    });

  it('give any string of UTF-16 units back as it came', () => {
    const store = openStore(':memory:');
    let n = 0;
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 40 }), units => {
      const text = String.fromCharCode(...units);
      const { note } = keepNote(store, aNote({ key: `k${++n}`, text }));
      expect(noteById(store, note.id)!.text).toBe(text);
    }));
  });

  it('can be read by chat, by key and from the beginning', () => {
    const store = openStore(':memory:');
    for (const [i, chat] of ['a', 'b', 'a', 'a'].entries()) keepNote(store, aNote({ key: `k${i}`, chat, text: `note ${i}` }));
    expect(lastNotes(store, 'a', 2).map(n => n.text)).toEqual(['note 2', 'note 3']);
    expect(lastNotes(store, 'a', 2, 4).map(n => n.text)).toEqual(['note 0', 'note 2']);
    expect(noteByKey(store, 'k1')!.chat).toBe('b');
    expect([...allNotes(store)].map(n => n.id)).toEqual([1, 2, 3, 4]);
  });

  it('are seen by another process that has the log open', () => {
    const dir = freshDir();
    const [one, two] = [openStore(dir), openStore(dir)];
    onTestFinished(() => { one.close(); two.close(); });
    keepNote(one, aNote());
    expect(noteByKey(two, 'm:1:1')!.text).toBe('Radiator is off.');
    expect(keepNote(two, aNote()).fresh).toBe(false);
  });
});

describe('the log is append-only', () => {
  const store = openStore(':memory:');
  const { note } = keepNote(store, aNote());
  keepUnread(store, note.id, ['is off']);
  appendEntry(store, { note: note.id, at: note.at, entry: { kind: 'fit', part: 'radiator', state: 'off' } }, [{ machine: '', key: 'radiator' }]);

  it.each(['note', 'entry', 'unread', 'subject'])('%s refuses to be changed and to be deleted', table => {
    const column = { note: 'text', entry: 'body', unread: 'text', subject: 'key' }[table]!;
    expect(() => store.run(`UPDATE ${table} SET ${column} = 'gone'`)).toThrow(`${table} is append-only`);
    expect(() => store.run(`DELETE FROM ${table}`)).toThrow(`${table} is append-only`);
    if (table !== 'unread') expect(() => store.run(`INSERT OR REPLACE INTO ${table} SELECT * FROM ${table}`)).toThrow(`${table} is append-only`);
    expect(store.get(`SELECT count(*) AS n FROM ${table}`)).toEqual({ n: 1 });
  });

  it('an entry of no note, or about no entry, is refused', () => {
    expect(() => appendEntry(store, { note: 99, at: note.at, entry: { kind: 'remark', text: 'x' } }, [])).toThrow(/FOREIGN KEY/);
    expect(() => appendEntry(store, { note: note.id, at: note.at, entry: { kind: 'amend', undo: true, of: 99 } }, [])).toThrow(/FOREIGN KEY/);
  });
});
