import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { jpeg, oggOpus, openHouse, OWNER, rowsIn, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); house = openHouse(cloud); });
afterEach(async () => { await house.close(); await cloud.close(); });

const sha = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const inMedia = () => (existsSync(join(house.dir, 'media')) ? readdirSync(join(house.dir, 'media')) : []);
const MB = 1024 * 1024;
/** Enough of a JPEG at the front, then padding. */
const heavy = (bytes: number) => Buffer.concat([jpeg('heavy'), Buffer.alloc(bytes)]);

describe('photos and sound', () => {
  test('the largest form of a photo is kept under its hash, with its caption', async () => {
    const photo = jpeg('hub bearing');
    cloud.sendPhoto(OWNER, photo, { caption: 'left hub bearing' });
    await cloud.waitSent(1);
    expect(house.taken).toMatchObject([{ text: 'left hub bearing', files: [{ use: 'photo' }], media: [sha(photo)] }]);
    expect(inMedia()).toEqual([`${sha(photo)}.jpg`]);
    expect(readFileSync(join(house.dir, 'media', `${sha(photo)}.jpg`))).toEqual(Buffer.from(photo));
  });

  test('a voice message is sound; what it calls itself is only a claim', async () => {
    cloud.sendVoice(OWNER, oggOpus('voice'), { mime: 'text/html' });
    cloud.send(OWNER, { video_note: undefined });
    await cloud.waitSent(1);
    expect(house.taken).toMatchObject([{ text: '', files: [{ use: 'sound', claims: 'text/html' }], media: [sha(oggOpus('voice'))] }]);
  });

  test('the type is told by the bytes: sound named a picture is sound, a web page named sound is refused', async () => {
    cloud.sendPhoto(OWNER, oggOpus('named jpg'), { path: 'photos/a.jpg' });
    cloud.sendVoice(OWNER, Buffer.from('<!doctype html><script>alert(1)</script>'), { path: 'voice/b.ogg' });
    await cloud.waitSent(2);
    expect(house.taken[0]!.media).toEqual([sha(oggOpus('named jpg'))]);
    expect(house.taken[1]!.media).toEqual(['refused: The file is neither a photo nor sound that the log can keep.']);
    expect(inMedia()).toHaveLength(1);
  });

  test('a path that climbs out, or from the root, ends under our own name', async () => {
    for (const path of ['../../x', '/etc/passwd', 'photos/../../../x', 'a//b']) {
      const photo = jpeg(path);
      cloud.sendPhoto(OWNER, photo, { path, caption: path });
      await until(() => house.taken, t => t.at(-1)?.text === path);
      expect(house.taken.at(-1)!.media).toEqual([sha(photo)]);
    }
    expect(inMedia().every(name => /^[0-9a-f]{64}\.jpg$/.test(name))).toBe(true);
    expect(readdirSync(house.dir).filter(n => !/^(media|pawl\.db)/.test(n))).toEqual([]);
  });

  test('a picture or sound sent as a file is kept too; another kind of file is not, but its words are', async () => {
    const named = (mime_type: string, caption: string) => {
      const bytes = jpeg(mime_type);
      const id = cloud.sendPhoto(0, bytes); // a place to fetch it from
      const { photo } = cloud.cloud.message(0, id)!;
      cloud.send(OWNER, { document: { ...photo!.at(-1)!, mime_type } as never, caption });
    };
    named('image/jpeg', 'scan of the plate');
    named('application/pdf', 'the manual');
    const sent = await cloud.waitSent(3);
    expect(house.taken.map(m => [m.text, m.media.length])).toEqual([['scan of the plate', 1], ['the manual', 0]]);
    expect(sent.map(s => s.text).join('\n')).toMatch(/can't read a file that is neither a photo nor sound.*Your words with it are kept/);
  });

  test('stickers, places, contacts and polls are named as not read, once; comings and goings are passed over', async () => {
    cloud.send(OWNER, { sticker: { file_id: 's' } as never });
    cloud.send(OWNER, { location: { latitude: 1, longitude: 2 } });
    cloud.send(OWNER, { contact: { phone_number: '0', first_name: 'x' } });
    cloud.send(OWNER, { new_chat_title: 'Shed' });
    cloud.sendText(OWNER, 'end');
    const sent = await cloud.waitSent(4);
    expect(sent.slice(0, 3).map(s => s.text)).toEqual(['a sticker', 'a place on the map', 'a contact'].map(w => `I can't read ${w}; say it in words, or send a photo or a voice message.`));
    expect(house.taken.map(m => m.text)).toEqual(['end']);
    expect(cloud.downloads()).toEqual([]);
  });
});

describe('an album', () => {
  const album = (marks: string[], caption?: string, at = 0, id = 'g1') => marks.forEach((mark, i) =>
    cloud.sendPhoto(OWNER, jpeg(mark), { ...(i === at && caption ? { caption } : {}), extra: { media_group_id: id } }));

  test('is one note with all its pictures, wherever its words stand', async () => {
    album(['a', 'b', 'c'], 'left hub');
    cloud.sendText(OWNER, 'it is rough');
    album(['d', 'e'], 'right hub', 1, 'g2');
    await cloud.waitSent(3);
    await house.intake.idle();
    const media = (...marks: string[]) => marks.map(m => sha(jpeg(m)));
    expect(house.taken.map(m => [m.text, m.media])).toEqual([['left hub', media('a', 'b', 'c')], ['it is rough', []], ['right hub', media('d', 'e')]]);
    expect(house.taken[0]!.key).toBe(`tg:${cloud.botId}:m:${OWNER}:1`);
  });

  test('a picture that comes too late for it is a note of its own', async () => {
    album(['a', 'b'], 'left hub');
    await cloud.waitSent(1);
    album(['late']);
    await cloud.waitSent(2);
    expect(house.taken.map(m => [m.text, m.media.length])).toEqual([['left hub', 2], ['', 1]]);
  });

  test('loses no picture when one of them can\'t be had now', async () => {
    cloud.fault('getFile', 'reset-before', 3, 'file-');
    album(['a', 'b', 'c'], 'left hub');
    // The sentence, the two that could be had, and the first one later.
    await cloud.waitSent(3);
    await house.intake.idle();
    expect(house.taken.flatMap(m => m.media).sort()).toEqual(['a', 'b', 'c'].map(m => sha(jpeg(m))).sort());
    expect(house.taken.filter(m => m.text === 'left hub')).toHaveLength(1);
  });
});

describe('files that are too large', () => {
  const said = /larger than 20 MB.*not kept/;
  test('are refused by the size the platform says, before anything is fetched; the caption stays', async () => {
    cloud.sendPhoto(OWNER, jpeg('small'), { says: 20 * MB + 1, caption: 'whole tractor' });
    const sent = await cloud.waitSent(2);
    expect(sent.map(s => s.text).join('\n')).toMatch(said);
    expect(house.taken).toMatchObject([{ text: 'whole tractor', media: [] }]);
    expect([cloud.downloads(), cloud.calls('getFile')]).toEqual([[], []]);
  });

  test('are refused when getFile says so', async () => {
    const id = cloud.sendVoice(0, oggOpus('x'), { says: 21 * MB });
    const { voice } = cloud.cloud.message(0, id)!;
    cloud.send(OWNER, { voice: { ...voice!, file_size: undefined } });
    const [sent] = await cloud.waitSent(1);
    expect(sent!.text).toMatch(said);
    expect(sent!.text).not.toMatch(/words/);
    expect(house.taken).toEqual([]);
    expect(cloud.downloads()).toEqual([]);
  });

  test('are cut off at the limit when no length is named', async () => {
    cloud.sendPhoto(OWNER, heavy(20 * MB), { says: undefined, caption: 'too much' });
    const sent = await cloud.waitSent(2);
    expect(sent.map(s => s.text).join('\n')).toMatch(said);
    expect(house.taken).toMatchObject([{ text: 'too much', media: [] }]);
    expect([inMedia(), rowsIn(house.store, 'media')]).toEqual([[], 0]);
  });

  test('but one of just 20 MB is kept', async () => {
    const photo = heavy(20 * MB - jpeg('heavy').length);
    cloud.sendPhoto(OWNER, photo, { caption: 'just so' });
    await cloud.waitSent(1);
    expect(house.taken[0]!.media).toEqual([sha(photo)]);
  });
});

describe('fetching that goes wrong', () => {
  test('a download that breaks off is fetched again and never kept short', async () => {
    const photo = Buffer.concat([jpeg('whole'), Buffer.alloc(200_000, 7)]);
    cloud.fault('file', 'cut', 2);
    cloud.sendPhoto(OWNER, photo, { caption: 'bearing' });
    await cloud.waitSent(1);
    expect(cloud.downloads()).toHaveLength(3);
    expect(house.taken[0]!.media).toEqual([sha(photo)]);
    expect(inMedia()).toHaveLength(1);
  });

  test('one that ends early without a named length is found short by the size the platform said', async () => {
    const photo = jpeg('all of it');
    const id = cloud.sendPhoto(OWNER, photo, { caption: 'bearing' });
    const file = [...cloud.cloud.files.values()].at(-1)!;
    file.bytes = photo.subarray(0, 12);
    await until(cloud.downloads, d => d.length >= 1);
    file.bytes = photo;
    await cloud.waitSent(1);
    expect(house.taken[0]!.media).toEqual([sha(photo)]);
    expect(id).toBe(1);
  });

  test('when the file can\'t be had now, the message waits in a line of its own and the talk goes on', async () => {
    cloud.fault('getFile', 'reset-before', 4);
    cloud.sendVoice(OWNER, oggOpus('later'), { date: 1_773_480_000 });
    cloud.sendText(OWNER, 'what is next');
    const sent = await cloud.waitSent(2);
    expect(sent.map(s => s.text)).toEqual(['I can\'t fetch that from the chat just now. It is written down, and I keep trying.', 'noted: what is next']);
    await cloud.waitSent(3);
    // It keeps its own identity, moment and conversation.
    expect(house.taken[1]).toMatchObject({ key: `tg:${cloud.botId}:m:${OWNER}:1`, chat: 'bench', at: '2026-03-14T09:20:00+00:00', media: [sha(oggOpus('later'))] });
    expect(house.taken).toHaveLength(2);
  });

  test('one that the platform no longer has is said to be gone, with its words kept', async () => {
    const id = cloud.sendPhoto(0, jpeg('x'));
    const photo = cloud.cloud.message(0, id)!.photo!;
    cloud.cloud.files.clear();
    cloud.send(OWNER, { photo, caption: 'the old hub' });
    const sent = await cloud.waitSent(2);
    expect(sent[0]!.text).toBe('The chat no longer has that file; send it again. Your words with it are kept.');
    expect(house.taken[0]!.text).toBe('the old hub');
  });
});
