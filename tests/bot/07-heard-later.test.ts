import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { hearKept, hearWith } from '../../bot/ears.ts';
import { putOut } from '../../bot/outbox.ts';
import { receiver } from '../../bot/receive.ts';
import { createService } from '../../bot/serve.ts';
import { openShop } from '../../bot/shop.ts';
import { unheardNotes } from '../../domain/store/heard.ts';
import { outbox } from '../../domain/store/outbox.ts';
import { createHearer } from '../../nlp/hear/hear.ts';

/** Sound that came while there was nothing to hear with is kept, said to be so, and heard as soon as there is. */
test('kept sound is heard later, once', async () => {
  const clips = resolve(import.meta.dirname, '../../fixtures/clips');
  const bytes = readFileSync(join(clips, readdirSync(clips).filter(f => f.endsWith('.ogg')).sort()[0]!));
  const dir = mkdtempSync(join(tmpdir(), 'later-'));
  const { log, deps } = openShop(dir, 'Europe/Paris');
  const deaf = createService({ deps, receiving: receiver({ store: log.store }) });
  const first = await deaf.take({ key: 'voice:1', door: 'page', chat: 'bench', at: '2026-05-01T10:00:00+02:00', text: '', files: [{ bytes, use: 'sound' }] });
  expect(first.say).toContain('The sound is kept');
  await deaf.close();
  putOut(log.store, { key: 'voice:1', door: 'telegram', at: '2026-05-01T10:00:00+02:00' }, { target: '7', say: first.say, buttons: [], files: [] });
  expect(unheardNotes(log.store).map(n => n.key)).toEqual(['voice:1']);

  const ear = createHearer();
  const hearing = createService({ deps, receiving: receiver({ store: log.store, hear: hearWith(ear, log, () => undefined) }) });
  await hearKept(hearing, log.store, () => true);
  expect(unheardNotes(log.store)).toEqual([]);
  const [, later] = log.store.all<{ text: string; edits: number }>('SELECT text, edits FROM note ORDER BY id');
  expect(later!.edits).toBe(first.note);
  expect(later!.text.length).toBeGreaterThan(5);
  // The chat that was told "the sound is kept" is told what was heard.
  const out = outbox.byKey(log.store, `heard:${first.note}`)!;
  expect(out.door).toBe('telegram');
  expect(JSON.parse(out.body)).toMatchObject({ target: '7', say: expect.stringContaining(later!.text) });
  await hearing.close();
  await ear.close();
  log.store.close();
  rmSync(dir, { recursive: true, force: true });
}, 120_000);
