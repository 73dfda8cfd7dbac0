import { createHash } from 'node:crypto';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { keepMedia, linkMedia, mediaByHash, mediaOfNote, mediaOfPart, MEDIA_LIMIT, mediaPath, readMedia } from '../../../domain/store/media.ts';
import { keepNote, noteById } from '../../../domain/store/notes.ts';
import { openStore, type Store } from '../../../domain/store/open.ts';
import { aNote, freshDir } from './tools/fresh.ts';

/** The smallest PNG: signature, IHDR, IDAT, IEND (W3C PNG specification, section 5). */
const PNG = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');
/** First page of an Ogg stream with an Opus head (RFC 7845, section 5.1). */
const OGG = Buffer.concat([Buffer.from('OggS\0\x02'), Buffer.alloc(8), Buffer.from([1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 19]), Buffer.from('OpusHead\x01\x01'), Buffer.alloc(9)]);
const AT = '2026-03-04T15:20:00-05:00';

function store(): Store {
  const made = openStore(freshDir());
  onTestFinished(() => made.close());
  return made;
}

describe('photos and sound', () => {
  it('are files named by what is in them, kept once', async () => {
    const s = store();
    const hash = createHash('sha256').update(PNG).digest('hex');
    expect(await keepMedia(s, PNG, AT)).toEqual({ kept: { hash, mime: 'image/png', ext: 'png', bytes: PNG.length } });
    await keepMedia(s, PNG, AT);
    expect(readdirSync(join(s.dir!, 'media'))).toEqual([`${hash}.png`]);
    expect(Buffer.from(readMedia(s, mediaByHash(s, hash)!)).equals(PNG)).toBe(true);
    if (process.platform !== 'win32') expect(statSync(mediaPath(s, mediaByHash(s, hash)!)).mode & 0o077).toBe(0);
  });

  it('are known by their first bytes and not by what they are called', async () => {
    const s = store();
    expect(await keepMedia(s, OGG, AT)).toMatchObject({ kept: { ext: 'opus' } });
    for (const bytes of ['<html><script>alert(1)</script>', '<svg xmlns="http://www.w3.org/2000/svg"/>', '%PDF-1.4 a manual', 'MZ a program', 'just words'])
      expect(await keepMedia(s, Buffer.from(bytes), AT)).toHaveProperty('refused');
    expect(readdirSync(join(s.dir!, 'media'))).toHaveLength(1);
  });

  it('are refused when empty or larger than 20 MB', async () => {
    const s = store();
    expect(await keepMedia(s, new Uint8Array(0), AT)).toHaveProperty('refused');
    const big = Buffer.concat([PNG, Buffer.alloc(MEDIA_LIMIT)]);
    expect(await keepMedia(s, big, AT)).toEqual({ refused: expect.stringContaining('20 MB') });
    expect(await keepMedia(s, big.subarray(0, MEDIA_LIMIT), AT)).toHaveProperty('kept');
    expect(existsSync(join(s.dir!, 'media'))).toBe(true);
  });

  it('are tied to a note and to a part', async () => {
    const s = store();
    const { note } = keepNote(s, aNote());
    const kept = await keepMedia(s, PNG, AT);
    if (!('kept' in kept)) throw new Error(kept.refused);
    for (let i = 0; i < 2; i++) linkMedia(s, { hash: kept.kept.hash, note: note.id, machine: 'heron', part: 'radiator' });
    linkMedia(s, { hash: kept.kept.hash, note: note.id });
    expect(mediaOfPart(s, 'heron', 'radiator')).toEqual([kept.kept]);
    expect(mediaOfPart(s, '', 'radiator')).toEqual([]);
    expect(mediaOfNote(s, note.id)).toEqual([kept.kept]);
    expect(noteById(s, note.id)!.media).toEqual([kept.kept.hash]);
    expect(() => linkMedia(s, { hash: 'nowhere', note: note.id })).toThrow(/FOREIGN KEY/);
  });
});
