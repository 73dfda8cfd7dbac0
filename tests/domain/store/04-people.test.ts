import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isPaired, looksLikeCode, newPairingCode, pair, pairedPeople, PAIRING_MS, PAIRING_TRIES, revoke, tryPairingCode } from '../../../domain/store/people.ts';
import { openStore } from '../../../domain/store/open.ts';
import { freshDir } from './tools/fresh.ts';

const NOW = 1_772_650_000_000;
const WRONG = 'ZZZZ-ZZZZ';

describe('pairing', () => {
  it('has forty random bits in a code that can be read aloud', () => {
    const store = openStore(':memory:');
    const codes = new Set(Array.from({ length: 500 }, () => newPairingCode(store, NOW)));
    expect(codes.size).toBe(500);
    for (const code of codes) expect(code).toMatch(/^[2-9A-HJ-NP-Z]{4}-[2-9A-HJ-NP-Z]{4}$/);
    // 32 signs are 5 bits each, eight of them 40.
    expect(new Set([...codes].join('').replaceAll('-', '')).size).toBe(32);
  });

  it('takes the code once, however it is typed', () => {
    const store = openStore(':memory:');
    const code = newPairingCode(store, NOW);
    expect(looksLikeCode(` ${code.toLowerCase()}\n`)).toBe(true);
    expect(tryPairingCode(store, ` ${code.toLowerCase().replace('-', '')} `, NOW + 1)).toBe('right');
    expect(tryPairingCode(store, code, NOW + 2)).toBe('none');
  });

  it('locks after the fifth wrong try, for the right code too', () => {
    const store = openStore(':memory:');
    const code = newPairingCode(store, NOW);
    const tries = Array.from({ length: PAIRING_TRIES }, () => tryPairingCode(store, WRONG, NOW));
    expect(tries).toEqual(['wrong', 'wrong', 'wrong', 'wrong', 'locked']);
    expect(tryPairingCode(store, code, NOW)).toBe('locked');
    expect(tryPairingCode(store, newPairingCode(store, NOW), NOW)).toBe('right');
  });

  it('lets the code expire', () => {
    const store = openStore(':memory:');
    const code = newPairingCode(store, NOW);
    expect(tryPairingCode(store, code, NOW + PAIRING_MS)).toBe('expired');
    expect(tryPairingCode(store, code, NOW + PAIRING_MS - 1)).toBe('right');
  });

  it('leaves the code nowhere in the files', () => {
    const dir = freshDir();
    const store = openStore(dir);
    const code = newPairingCode(store, NOW);
    store.close();
    const bytes = readFileSync(join(dir, 'pawl.db')).toString('latin1');
    expect(bytes.includes(code)).toBe(false);
    expect(bytes.includes(code.replace('-', ''))).toBe(false);
  });
});

describe('people', () => {
  it('are nobody until paired, known by number, and lose access at once', () => {
    const store = openStore(':memory:');
    expect([isPaired(store, 'telegram', 7), pairedPeople(store, 'telegram')]).toEqual([false, []]);
    pair(store, 'telegram', 7, '2026-03-04T15:20:00Z');
    expect([isPaired(store, 'telegram', 7), isPaired(store, 'telegram', 8), isPaired(store, 'page', 7)]).toEqual([true, false, false]);
    revoke(store, 'telegram', 7, '2026-03-05T15:20:00Z');
    expect(isPaired(store, 'telegram', 7)).toBe(false);
    pair(store, 'telegram', 7, '2026-03-06T15:20:00Z');
    expect(pairedPeople(store, 'telegram')).toEqual([7]);
  });
});
