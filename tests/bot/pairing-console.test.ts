import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { withPairing } from '../../bot/pairing-console.ts';
import { DOOR } from '../../bot/doors/telegram/who.ts';
import type { Reply } from '../../bot/incoming.ts';
import type { Service } from '../../bot/service.ts';
import { openStore, type Store } from '../../domain/store/open.ts';
import { isPaired, pair } from '../../domain/store/people.ts';

let folder: string, store: Store;
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'pawl-pairing-')); store = openStore(folder); });
afterEach(() => { store.close(); rmSync(folder, { recursive: true, force: true }); });

const taken: string[] = [];
const inner = { take: (m: { text: string }) => { taken.push(m.text); return Promise.resolve({ say: 'kept' } as Reply); } } as unknown as Service;
const say = async (text: string): Promise<string> => (await withPairing(inner, store).take({ text } as Parameters<Service['take']>[0])).say;

describe('pairing at the console', () => {
  it('gives a code, and keeps no note of it', async () => expect(await say('pairing code')).toMatch(/^Pairing code: [2-9A-Z]{4}-[2-9A-Z]{4}\n/));
  it('shuts out every paired phone', async () => {
    pair(store, DOOR, 7, '2026-03-05T15:20:00Z');
    pair(store, DOOR, 8, '2026-03-05T15:21:00Z');
    expect(await say('Unpair my phone.')).toMatch(/answers nobody/);
    expect([7, 8].some(user => isPaired(store, DOOR, user))).toBe(false);
    expect(await say('unpair')).toBe('Nobody is paired.');
  });
  it('hands on what only begins like it', async () => {
    expect(await say('unpair the drive wheels and grease them')).toBe('kept');
    expect(taken).toEqual(['unpair the drive wheels and grease them']);
  });
});
