import { mkdtempSync, rmSync, statSync, writeFileSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPage } from '../../../../bot/doors/page/server.ts';
import { signIn } from './client.ts';
import { compilePage } from './compile.ts';
import { fakeService } from './fake-service.ts';

const dataDir = mkdtempSync(join(tmpdir(), 'pawl-page-'));
beforeAll(compilePage);
afterAll(() => rmSync(dataDir, { recursive: true }));
const open = (dir?: string, port = 0) => openPage({ service: fakeService(), port, dataDir: dir });
const base = (port: number) => `http://127.0.0.1:${port}`;

describe('the way in for the one person', () => {
  test('the printed address sets a cookie that only this site gets, and leaves the key out of the address bar', async () => {
    const page = await open();
    const answer = await fetch(page.url, { redirect: 'manual' });
    expect(answer.status).toBe(303);
    expect(answer.headers.get('location')).toBe('/');
    expect(answer.headers.getSetCookie()[0]).toMatch(/^pawl-\d+=\S+; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Strict$/);
    const cookie = await signIn(page.url);
    expect((await fetch(`${base(page.port)}/`, { headers: { cookie } })).status).toBe(200);
    await page.close();
  });

  test('without key and cookie it says in a sentence where the address is, and hands out nothing', async () => {
    const page = await open();
    for (const path of ['/', '/?key=', '/?key=wrong', `/?key=${new URL(page.url).searchParams.get('key')!.slice(0, -1)}`]) {
      const answer = await fetch(base(page.port) + path, { redirect: 'manual' });
      expect(answer.status, path).toBe(401);
      expect(answer.headers.getSetCookie()).toEqual([]);
      const text = await answer.text();
      expect(text).toContain('Open the address that Pawl printed where you started it');
      expect(text).not.toContain(new URL(page.url).searchParams.get('key'));
    }
    await page.close();
  });

  test('each start makes a new key of 128 bits; an old one no longer opens, but a browser that is known stays known', async () => {
    const first = await open(dataDir);
    const cookie = await signIn(first.url);
    const key = new URL(first.url).searchParams.get('key')!;
    expect(Buffer.from(key, 'base64url')).toHaveLength(16);
    await first.close();
    const second = await open(dataDir, first.port);
    expect(new URL(second.url).searchParams.get('key')).not.toBe(key);
    expect((await fetch(first.url, { redirect: 'manual' })).status).toBe(401);
    expect((await fetch(`${base(second.port)}/`, { headers: { cookie } })).status).toBe(200);
    expect((await fetch(first.url, { headers: { cookie }, redirect: 'manual' })).status).toBe(303);
    await second.close();
  });

  test('the secret is readable by its owner alone; a damaged one is replaced and signs every browser out', async () => {
    const file = join(dataDir, 'page.secret');
    const first = await open(dataDir);
    const cookie = await signIn(first.url);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(first.url).not.toContain(readFileSync(file, 'utf8'));
    await first.close();
    writeFileSync(file, 'short');
    const second = await open(dataDir, first.port);
    expect((await fetch(`${base(second.port)}/`, { headers: { cookie } })).status).toBe(401);
    await second.close();
  });

  test('without a data folder a cookie ends with the program', async () => {
    const first = await open();
    const cookie = await signIn(first.url);
    await first.close();
    const second = await open(undefined, first.port);
    expect((await fetch(`${base(second.port)}/glance`, { headers: { cookie } })).status).toBe(401);
    await second.close();
  });

  test('a taken port is an error that says so', async () => {
    const first = await open();
    await expect(open(undefined, first.port)).rejects.toThrow(/EADDRINUSE/);
    await first.close();
  });
});
