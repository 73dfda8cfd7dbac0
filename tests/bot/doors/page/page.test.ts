import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, Page as Tab } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openPage, type Page } from '../../../../bot/doors/page/server.ts';
import { browserThere, launch, openTab } from './browser.ts';
import { compilePage } from './compile.ts';
import { fakeService, type FakeService } from './fake-service.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PHONE = { width: 390, height: 844 };

describe.skipIf(!browserThere)('the page in a browser', () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'pawl-page-'));
  let browser: Browser, context: BrowserContext, service: FakeService, page: Page, tab: Tab, complaints: string[];
  beforeAll(async () => { compilePage(); browser = await launch(); });
  afterAll(async () => { await browser.close(); rmSync(dataDir, { recursive: true }); });
  beforeEach(async () => {
    service = fakeService();
    page = await openPage({ service, port: 0, dataDir });
    context = await browser.newContext();
    tab = await context.newPage();
    complaints = await openTab(tab, page.url);
  });
  afterEach(async () => {
    await context.close();
    await page.close();
    expect(complaints.filter(c => !/503|ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET/.test(c))).toEqual([]);
  });

  const say = async (t: Tab, words: string) => { await t.fill('#words', words); await t.keyboard.press('Enter'); };
  const reply = (t: Tab, text: string) => t.locator('#said .reply', { hasText: text }).waitFor();

  describe('talk', () => {
    test('a note is answered here and shows in a second tab, and in a tenth, as it happens', async () => {
      const tabs: Tab[] = [];
      // More tabs than the six connections that a browser allows to one server.
      for (let n = 0; n < 9; n++) { const t = await context.newPage(); await openTab(t, `http://127.0.0.1:${page.port}/`); tabs.push(t); }
      await say(tab, 'Radiator is off.');
      for (const t of [tab, ...tabs]) await reply(t, 'Noted: Radiator is off.');
      expect(service.taken).toHaveLength(1);
      // The tab that holds the stream is closed; another takes over.
      await tab.close();
      service.elsewhere('telegram', 'Fan belt came.', 'Noted: fan belt is here.');
      for (const t of tabs) await reply(t, 'Noted: fan belt is here.');
    });
    test('what was said before is there after a reload and by a bookmark without the key; the address bar holds no key', async () => {
      await say(tab, 'Radiator is off.');
      await reply(tab, 'Noted');
      expect(tab.url()).toBe(`http://127.0.0.1:${page.port}/`);
      await tab.reload();
      await reply(tab, 'Noted: Radiator is off.');
    });
    test('a button says the words it carries, and only the newest exchange has any', async () => {
      await say(tab, 'which wheel');
      await tab.getByRole('button', { name: 'Left front wheel' }).click();
      await reply(tab, 'Noted: left front wheel on for good.');
      expect(service.taken.map(m => m.text)).toEqual(['which wheel', 'left front wheel']);
      expect(await tab.locator('.choices button').allTextContents()).toEqual(['Strike it']);
    });
    test('notes of every door stand in the order of their numbers, struck ones struck', async () => {
      const first = service.elsewhere('terminal', 'Six bolts in the tin', 'Noted.');
      service.elsewhere('telegram', 'Five bolts', 'Noted: five.');
      await reply(tab, 'Noted: five.');
      service.exchanges[0] = { ...first, struck: true };
      service.elsewhere('telegram', 'scratch note 1', 'Struck it.');
      await tab.locator('del', { hasText: 'Six bolts' }).waitFor();
      expect(await tab.locator('#said .number').allTextContents()).toEqual(['1', '2', '3']);
    });
    test('what took longer to work out comes under its reply', async () => {
      const t = service.elsewhere('page', 'when will it be done', 'Working that out…');
      await reply(tab, 'Working that out…');
      service.tell({ ...t, text: '', say: 'By Fri 5 Jun as likely as not.' });
      await reply(tab, 'By Fri 5 Jun');
      expect(await tab.locator('#said li').innerText()).toMatch(/when will it be done\s+Working that out…\s+By Fri 5 Jun/);
    });
    test('sound without words shows its reply once', async () => {
      await tab.setInputFiles('#picked', { name: 'm.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
      await reply(tab, 'Noted:');
      await new Promise(later => setTimeout(later, 600));
      expect(await tab.locator('#said .reply').count()).toBe(1);
    });
    test('markup in a note is shown, not run', async () => {
      await say(tab, '<img src=x onerror="document.title=1"><b>b</b>');
      await reply(tab, '<b>b</b>');
      expect(await tab.locator('#said img, #said b').count()).toBe(0);
    });
    test('earlier notes come at a press, and none is missing', async () => {
      for (let n = 1; n <= 90; n++) service.elsewhere('telegram', `note ${n}`, 'Noted.');
      await tab.reload();
      await tab.locator('#said li').nth(39).waitFor();
      for (const shown of [80, 90]) {
        await tab.click('#older');
        await expect.poll(() => tab.locator('#said li').count()).toBe(shown);
      }
      expect(await tab.locator('#said .number').allTextContents()).toEqual(Array.from({ length: 90 }, (_, i) => String(i + 1)));
      expect(await tab.locator('#older').isVisible()).toBe(false);
    });
    test('a photo goes with the words beside it and is shown', async () => {
      const png = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');
      await tab.fill('#words', 'Magneto, wiring before');
      await tab.setInputFiles('#picked', { name: 'm.png', mimeType: 'image/png', buffer: png });
      await reply(tab, 'Noted: Magneto, wiring before');
      expect(Buffer.compare(service.taken[0]!.files![0]!.bytes, png)).toBe(0);
      await expect.poll(() => tab.locator('.kept img').evaluate((i: { naturalWidth?: number }) => i.naturalWidth)).toBe(1);
    });
  });

  describe('nothing said is lost', () => {
    test('a note that could not be kept waits, through a reload, and goes once when it can', async () => {
      service.failNext(1000);
      await say(tab, 'Oil drained.');
      await tab.locator('#waiting li', { hasText: 'not sent yet' }).waitFor();
      await tab.reload();
      await tab.locator('#waiting li', { hasText: 'Oil drained.' }).waitFor();
      service.failNext(0);
      await reply(tab, 'Noted: Oil drained.');
      expect(service.taken).toHaveLength(1);
      await expect.poll(() => tab.locator('#waiting li').count()).toBe(0);
    });
    test('notes said while the program is stopped go in their order when it runs again, dated to when they were said', async () => {
      await page.close();
      await tab.locator('#line', { hasText: 'Pawl does not answer' }).waitFor();
      const words = ['Oil drained.', 'Oil filled.', 'Oil checked.'];
      const before = Date.now();
      for (const w of words) await say(tab, w);
      await tab.locator('#waiting li').nth(2).waitFor();
      const after = Date.now();
      await new Promise(later => setTimeout(later, 2000));
      page = await openPage({ service, port: page.port, dataDir });
      await reply(tab, 'Noted: Oil checked.');
      expect(service.taken.map(m => m.text)).toEqual(words);
      for (const m of service.taken) {
        expect(Date.parse(m.at)).toBeGreaterThanOrEqual(before - 1000);
        expect(Date.parse(m.at)).toBeLessThanOrEqual(after);
      }
      await expect.poll(() => tab.locator('#line').textContent()).toBe('');
    });
    test('when this browser is not known any more, it says what to do, and nothing is lost', async () => {
      await page.close();
      rmSync(join(dataDir, 'page.secret'));
      page = await openPage({ service, port: page.port, dataDir });
      await tab.locator('#line', { hasText: 'Open the address that Pawl printed' }).waitFor();
      await say(tab, 'Oil drained.');
      await tab.locator('#waiting li', { hasText: 'not sent yet' }).waitFor();
      await tab.goto(page.url);
      await reply(tab, 'Noted: Oil drained.');
      complaints.splice(0, complaints.length, ...complaints.filter(c => !c.includes('401')));
    });
    test('a note that is too long is given back in words', async () => {
      await say(tab, 'a'.repeat(70_000));
      await tab.locator('#waiting', { hasText: '64 KiB' }).waitFor();
      await tab.getByRole('button', { name: 'Put the words back' }).click();
      expect(await tab.inputValue('#words')).toHaveLength(70_000);
      expect(await tab.locator('#waiting li').count()).toBe(0);
      complaints.splice(0, complaints.length, ...complaints.filter(c => !c.includes('413')));
    });
  });

  describe('at a glance', () => {
    test('five tickets stand beside the talk and follow the shop', async () => {
      expect(await tab.locator('#glance h2').allTextContents()).toEqual(['Next', 'Holding up', 'To get', 'Not for good', 'Look again']);
      service.panels = service.panels.map(p => (p.title === 'To get' ? { ...p, say: 'Nothing to get.', lines: [] } : p));
      service.elsewhere('telegram', 'Got it all.', 'Noted.');
      await tab.locator('#glance', { hasText: 'Nothing to get.' }).waitFor();
    });
  });

  describe('for eyes and hands', () => {
    test.each(['light', 'dark'] as const)('no serious finding of axe-core, %s, wide and on a phone, with talk, choices and a refused note', async colorScheme => {
      await tab.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      service.tell({ ...service.elsewhere('telegram', 'Six bolts', 'Noted.'), struck: true });
      await say(tab, 'a'.repeat(70_000));
      await tab.locator('#waiting', { hasText: '64 KiB' }).waitFor();
      await say(tab, 'which wheel');
      await tab.getByRole('button', { name: 'Left front wheel' }).waitFor();
      for (const size of [{ width: 1366, height: 850 }, PHONE]) {
        await tab.setViewportSize(size);
        await tab.evaluate(AXE);
        const { violations, passes } = await tab.evaluate('axe.run()') as AxeResults;
        expect(passes.some(p => p.id === 'color-contrast')).toBe(true);
        expect(violations.filter(v => v.impact === 'serious' || v.impact === 'critical').map(v => `${v.id}: ${v.nodes.map(n => n.html).join(' ')}`)).toEqual([]);
      }
      complaints.splice(0, complaints.length, ...complaints.filter(c => !c.includes('413')));
    });
    test('the colours follow the system’s wish', async () => {
      const ground = () => tab.evaluate('getComputedStyle(document.documentElement).backgroundColor') as Promise<string>;
      const lightness = (rgb: string) => rgb.match(/\d+/g)!.slice(0, 3).reduce((n, c) => n + Number(c), 0) / 3;
      await tab.emulateMedia({ colorScheme: 'light' });
      expect(lightness(await ground())).toBeGreaterThan(180);
      await tab.emulateMedia({ colorScheme: 'dark' });
      expect(lightness(await ground())).toBeLessThan(60);
    });
    test('all by keyboard: skip link, words, choices, hands, each with its focus in sight', async () => {
      await say(tab, 'which wheel');
      await tab.getByRole('button', { name: 'Left front wheel' }).waitFor();
      await tab.reload();
      await tab.waitForSelector('html[data-ready]');
      const seen: string[] = [];
      for (let n = 0; n < 14; n++) {
        await tab.keyboard.press('Tab');
        const at = await tab.evaluate(`(e => ({ name: e === document.body ? 'BODY' : e.id || e.textContent.trim(), outline: parseFloat(getComputedStyle(e).outlineWidth), style: getComputedStyle(e).outlineStyle, top: e.getBoundingClientRect().top }))(document.activeElement)`) as { name: string; outline: number; style: string; top: number };
        if (at.name === 'BODY' || seen.includes(at.name)) break;
        seen.push(at.name);
        expect([at.style, at.outline >= 3, at.top >= 0], at.name).toEqual(['solid', true, true]);
      }
      expect(seen[0]).toBe('Go to where you say a note');
      for (const name of ['stream', 'Left front wheel', 'Right front wheel', 'words', 'Say it', 'push', 'handsFree', 'photo', 'aloud', 'glance']) expect(seen).toContain(name);
      await tab.reload();
      await tab.waitForSelector('html[data-ready]');
      await tab.keyboard.press('Tab');
      await tab.keyboard.press('Enter');
      await tab.keyboard.type('which wheel');
      await tab.keyboard.press('Enter');
      await expect.poll(() => service.taken.length).toBe(2);
      await tab.locator('#said li').nth(1).waitFor();
      for (let n = 0; n < 2; n++) await tab.keyboard.press('Shift+Tab');
      await tab.keyboard.press('Enter');
      await reply(tab, 'left front wheel on for good');
    });
    test('Shift and Enter starts a new line instead of sending', async () => {
      await tab.fill('#words', 'one');
      await tab.keyboard.press('Shift+Enter');
      await tab.keyboard.type('two');
      await tab.keyboard.press('Enter');
      await reply(tab, 'one');
      expect(service.taken[0]!.text).toBe('one\ntwo');
    });
    test('replies are told to a screen reader, old ones are not', async () => {
      service.elsewhere('telegram', 'Before', 'Noted: before.');
      await tab.reload();
      await reply(tab, 'Noted: before.');
      expect(await tab.locator('#told[role=status]').textContent()).toBe('');
      await say(tab, 'Now');
      await expect.poll(() => tab.locator('#told').textContent()).toBe('Noted: Now');
    });
    test('on a phone it is one column, nothing runs over the side, and what is pressed is large enough for a thumb', async () => {
      await tab.setViewportSize(PHONE);
      await say(tab, `which wheel`);
      await tab.getByRole('button', { name: 'Left front wheel' }).waitFor();
      await say(tab, 'x'.repeat(400));
      await reply(tab, 'xxx');
      const box = async (s: string) => (await tab.locator(s).boundingBox())!;
      const [talk, glance] = [await box('#talk'), await box('#glance')];
      expect(glance.y).toBeGreaterThanOrEqual(talk.y + talk.height - 1);
      expect(await tab.evaluate('document.documentElement.scrollWidth')).toBe(PHONE.width);
      for (const b of await tab.locator('button:visible').all()) expect((await b.boundingBox())!.height).toBeGreaterThanOrEqual(44);
      // The newest reply and the place to answer are both on the screen.
      const last = await box('#said li:last-child .reply'), foot = await box('#say');
      expect(last.y + last.height).toBeLessThanOrEqual(foot.y + 1);
      expect(foot.y + foot.height).toBeLessThanOrEqual(PHONE.height + 1);
    });
    test('on a wide screen talk and tickets stand side by side, in type for arm’s length', async () => {
      await tab.setViewportSize({ width: 1366, height: 850 });
      await say(tab, 'Radiator is off.');
      await reply(tab, 'Noted');
      const [talk, glance] = [await tab.locator('#talk').boundingBox(), await tab.locator('#glance').boundingBox()];
      expect(glance!.x).toBeGreaterThanOrEqual(talk!.x + talk!.width - 1);
      const size = (s: string) => tab.evaluate(`parseFloat(getComputedStyle(document.querySelector(${JSON.stringify(s)})).fontSize)`) as Promise<number>;
      expect(await size('#said .reply')).toBeGreaterThanOrEqual(24);
      for (const s of ['#said .words', '#glance li', '#glance h2', '#words', 'button.main']) expect(await size(s), s).toBeGreaterThanOrEqual(20);
    });
    test('nothing moves for those who wish it so', async () => {
      await say(tab, 'Radiator is off.');
      await reply(tab, 'Noted');
      const moves = () => tab.evaluate(`document.getAnimations().length + [...document.querySelectorAll('*')].filter(e => ['', '::before', '::after'].some(p => getComputedStyle(e, p || null).animationName !== 'none' || parseFloat(getComputedStyle(e, p || null).transitionDuration) > 0)).length`) as Promise<number>;
      await tab.emulateMedia({ reducedMotion: 'no-preference' });
      expect(await moves()).toBeGreaterThan(0);
      await tab.emulateMedia({ reducedMotion: 'reduce' });
      expect(await moves()).toBe(0);
    });
  });

  describe('reading aloud', () => {
    test('is off until asked for, then reads the replies to this tab’s notes alone', async () => {
      await tab.addInitScript('window.read = []; speechSynthesis.speak = u => { read.push(u.text); };');
      await tab.reload();
      await tab.waitForSelector('html[data-ready]');
      await say(tab, 'one');
      await reply(tab, 'Noted: one');
      await tab.click('#aloud');
      service.elsewhere('telegram', 'two', 'Noted: two');
      await reply(tab, 'Noted: two');
      await say(tab, 'three');
      await reply(tab, 'Noted: three');
      await expect.poll(() => tab.evaluate('read')).toEqual(['Noted: three']);
      expect(await tab.getAttribute('#aloud', 'aria-pressed')).toBe('true');
    });
  });

  describe('without a microphone', () => {
    test('the page says why, by name of what is missing', async () => {
      await tab.addInitScript(`Object.defineProperty(navigator, 'mediaDevices', { value: undefined }); Object.defineProperty(window, 'isSecureContext', { value: false })`);
      await tab.reload();
      await tab.waitForSelector('html[data-ready]');
      for (const b of ['#push', '#handsFree']) {
        await tab.evaluate(`document.getElementById('trouble').textContent = ''`);
        await tab.click(b);
        await tab.locator('#trouble', { hasText: `open this page as http://127.0.0.1:${page.port}` }).waitFor();
        expect(await tab.getAttribute(b, 'aria-pressed')).toBe('false');
      }
    });
  });
});
