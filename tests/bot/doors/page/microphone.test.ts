import type { Browser, Page as Tab } from 'playwright-core';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openPage, type Page } from '../../../../bot/doors/page/server.ts';
import { browserThere, launchWithMicrophone, microphoneFile, openTab, soundOf } from './browser.ts';
import { compilePage } from './compile.ts';
import { fakeService, type FakeService } from './fake-service.ts';

/** Below this a recording holds no speech but the browser's failure to open the fake microphone, which it reports nowhere else. */
const LOUD_ENOUGH = 0.01;
const MARKED = '#listening:not([hidden])';

describe.skipIf(!browserThere)('the page’s microphone', () => {
  let service: FakeService, page: Page, browser: Browser, tab: Tab, complaints: string[];
  beforeAll(compilePage);
  beforeEach(async () => {
    service = fakeService();
    page = await openPage({ service, port: 0 });
  });
  afterEach(async () => {
    expect(complaints).toEqual([]);
    await browser.close();
    await page.close();
  });
  const open = async (file: string) => {
    browser = await launchWithMicrophone(file);
    tab = await browser.newPage();
    complaints = await openTab(tab, page.url);
  };
  const sounds = () => service.taken.map(m => soundOf(m.files![0]!.bytes));
  const wait = (ms: number) => new Promise(later => setTimeout(later, ms));

  describe('push to talk', () => {
    test.each([
      ['the key held', async (t: Tab) => { await t.keyboard.down('F2'); await wait(4000); await t.keyboard.up('F2'); }],
      ['the key tapped twice', async (t: Tab) => { await t.keyboard.press('F2'); await wait(4000); await t.keyboard.press('F2'); }],
      ['the button held', async (t: Tab) => { await t.hover('#push'); await t.mouse.down(); await wait(4000); await t.mouse.up(); }],
      ['the button by Enter, stopped by Escape', async (t: Tab) => { await t.focus('#push'); await t.keyboard.press('Enter'); await wait(4000); await t.keyboard.press('Escape'); }],
    ])('%s sends what was said in between as 16 kHz sound', async (_how, talk) => {
      const { file } = await microphoneFile(2, 0.5);
      await open(file);
      const talking = talk(tab);
      await tab.waitForSelector(MARKED);
      expect(await tab.title()).toMatch(/^● Listening/);
      expect(await tab.getAttribute('#push', 'aria-pressed')).toBe('true');
      await talking;
      await expect.poll(() => service.taken.length).toBe(1);
      const [heard] = sounds();
      expect(heard!.rms).toBeGreaterThan(LOUD_ENOUGH);
      expect(heard!.rate).toBe(16_000);
      expect(heard!.seconds).toBeGreaterThan(2.5);
      expect(heard!.seconds).toBeLessThan(6);
      expect(service.taken[0]!.files![0]).toMatchObject({ claims: 'audio/wav', use: 'sound' });
      await tab.locator('#said .reply', { hasText: 'Noted: heard' }).waitFor();
      expect(await tab.locator(MARKED).count()).toBe(0);
      expect(await tab.title()).toBe('Pawl');
    });
    test('sound that could not be kept waits in the browser through a reload, to the last byte', async () => {
      const { file } = await microphoneFile(2, 0.5);
      await open(file);
      service.failNext(1000);
      await tab.keyboard.press('F2');
      await wait(2500);
      await tab.keyboard.press('F2');
      await tab.locator('#waiting li', { hasText: 'Spoken note' }).waitFor();
      await tab.locator('#waiting li', { hasText: 'not sent yet' }).waitFor();
      await tab.reload();
      await tab.locator('#waiting li', { hasText: 'Spoken note' }).waitFor();
      service.failNext(0);
      await expect.poll(() => service.taken.length, { timeout: 20_000 }).toBe(1);
      expect(sounds()[0]!.rms).toBeGreaterThan(LOUD_ENOUGH);
      expect(sounds()[0]!.seconds).toBeGreaterThan(1.5);
      complaints.splice(0, complaints.length, ...complaints.filter(c => !c.includes('503')));
    });
    test('words are answered while sound is still being heard, and how far that has come is shown', async () => {
      const { file } = await microphoneFile(2, 0.5);
      await open(file);
      let heard = () => {};
      const take = service.take.bind(service);
      service.take = async m => {
        if (m.files) { service.progress(m.key, 'hearing 3 min of talk…'); await new Promise<void>(done => { heard = done; }); }
        return take(m);
      };
      await tab.keyboard.press('F2');
      await wait(1500);
      await tab.keyboard.press('F2');
      await tab.locator('#waiting li', { hasText: 'hearing 3 min of talk…' }).waitFor();
      await tab.fill('#words', 'what is next');
      await tab.keyboard.press('Enter');
      await tab.locator('#said .reply', { hasText: 'Noted: what is next' }).waitFor();
      heard();
      await tab.locator('#said .reply', { hasText: 'Noted: heard' }).waitFor();
      await expect.poll(() => tab.locator('#waiting li').count()).toBe(0);
      service.progress('tg:1:m:5:6', 'Hearing 2 min of talk… 10 %', { door: 'telegram' });
      await tab.locator('#waiting li', { hasText: 'Hearing 2 min of talk… 10 %' }).waitFor();
      service.progress('tg:1:m:5:6', 'Heard 2 min of talk.', { door: 'telegram', done: true });
      await expect.poll(() => tab.locator('#waiting li').count()).toBe(0);
    });
    test('a silent microphone is told of and nothing is sent', async () => {
      const { file } = await microphoneFile(0, 10);
      await open(file);
      await tab.keyboard.press('F2');
      await wait(1500);
      await tab.keyboard.press('F2');
      await tab.locator('#trouble', { hasText: 'no sound at all' }).waitFor();
      expect(service.taken).toEqual([]);
    });
  });

  describe('hands free', () => {
    test('is off by default; then two sentences come as two pieces of speech, without the silence around them; Escape stops it', async () => {
      const { file, sentenceSeconds } = await microphoneFile(2, 4);
      await open(file);
      expect(await tab.locator(MARKED).count()).toBe(0);
      await tab.click('#handsFree');
      await tab.locator(MARKED, { hasText: 'Listening, hands free.' }).waitFor();
      expect(await tab.getAttribute('#handsFree', 'aria-pressed')).toBe('true');
      expect(await tab.title()).toMatch(/^● Listening/);
      await expect.poll(() => service.taken.length, { timeout: 40_000 }).toBe(2);
      for (const { rms, rate, seconds } of sounds()) {
        expect(rms).toBeGreaterThan(LOUD_ENOUGH);
        expect(rate).toBe(16_000);
        // The sentence, half a second before it and the pause after; less where it began before the detector was loaded.
        expect(seconds).toBeGreaterThan(1);
        expect(seconds).toBeLessThan(sentenceSeconds + 2.5);
      }
      expect(sounds()[1]!.seconds).toBeGreaterThan(sentenceSeconds - 0.5);
      await tab.keyboard.press('Escape');
      await expect.poll(() => tab.locator(MARKED).count()).toBe(0);
      expect(await tab.title()).toBe('Pawl');
      await wait(500);
      expect(service.taken).toHaveLength(2);
    });
    test('one tap stops it, and what was being said then is still sent', async () => {
      const { file } = await microphoneFile(4, 0.3);
      await open(file);
      await tab.click('#handsFree');
      await tab.locator('#heard', { hasText: 'I hear you.' }).waitFor();
      await wait(1500);
      await tab.click('#stop');
      await expect.poll(() => service.taken.length).toBeGreaterThan(0);
      expect(sounds()[0]!.rms).toBeGreaterThan(LOUD_ENOUGH);
      expect(await tab.locator(MARKED).count()).toBe(0);
      expect(await tab.getAttribute('#handsFree', 'aria-pressed')).toBe('false');
    });
  });
});
