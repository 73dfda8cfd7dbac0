import { request, type IncomingMessage, type OutgoingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPage, type Page } from '../../../../bot/doors/page/server.ts';
import { compilePage } from './compile.ts';
import { fakeService } from './fake-service.ts';
import { signIn } from './client.ts';

/** What a hostile page or neighbour may try, each by the header a browser would send with it (Fetch Metadata, RFC 6454, RFC 9110 §15.5.20). */
let page: Page;
let cookie: string;
const service = fakeService();
beforeAll(async () => { compilePage(); page = await openPage({ service, port: 0 }); cookie = await signIn(page.url); });
afterAll(() => page.close());

interface Got { status: number; headers: IncomingMessage['headers']; body: string }
/** node:http and not fetch, as fetch doesn't let a test choose Host or an unresolved path. */
function get(path: string, headers: OutgoingHttpHeaders = {}, method = 'GET', body = ''): Promise<Got> {
  return new Promise((ok, no) => {
    const r = request({ host: '127.0.0.1', port: page.port, path, method, headers }, res => {
      let text = '';
      res.setEncoding('utf8').on('data', d => { text += d; }).on('end', () => ok({ status: res.statusCode!, headers: res.headers, body: text }));
    });
    r.on('error', no).end(body);
  });
}
const known = (more: OutgoingHttpHeaders = {}) => ({ cookie, ...more });

describe('where it listens', () => {
  test('only 127.0.0.1: every other address of this computer refuses the connection', async () => {
    const others = Object.values(networkInterfaces()).flat().filter(i => i && i.family === 'IPv4' && !i.internal).map(i => i!.address);
    for (const host of [...others, '127.0.0.2']) {
      const outcome = await new Promise<string>(done => connect({ host, port: page.port }).on('connect', () => done('connected')).on('error', e => done((e as NodeJS.ErrnoException).code!)));
      expect(outcome, host).toBe('ECONNREFUSED');
    }
  });
});

describe('who may ask', () => {
  test.each(['evil.example', 'evil.example:80', '127.0.0.1', '127.0.0.1:1', 'localhost.evil.example', '0.0.0.0'])('Host %j is misdirected', async host => {
    expect((await get('/glance', known({ host }))).status).toBe(421);
  });
  test.each(['GET /glance HTTP/1.1\r\nHost: \r\n', 'GET /glance HTTP/1.0\r\n', 'GET http://evil.example/glance HTTP/1.1\r\nHost: evil.example\r\n', 'GET /glance HTTP/1.1\r\nHost: a b\r\n'])('%j gets nothing of the shop', async head => {
    const text = await new Promise<string>(done => {
      let all = '';
      const s = connect({ host: '127.0.0.1', port: page.port }, () => s.write(`${head}Cookie: ${cookie}\r\nConnection: close\r\n\r\n`));
      s.on('data', d => { all += d; }).on('close', () => done(all));
    });
    expect(text).toMatch(/^HTTP\/1\.1 4(00|21)/);
  });
  test('both own names answer, in any case', async () => {
    for (const name of ['127.0.0.1', 'localhost', 'LOCALHOST']) expect((await get('/page.css', { host: `${name}:${page.port}` })).status).toBe(200);
  });
  test.each(['https://evil.example', 'null', 'http://localhost:1', 'http://127.0.0.1.evil.example'])('Origin %j is refused', async origin => {
    expect((await get('/glance', known({ origin }))).status).toBe(403);
    expect((await get('/page.css', { origin })).status).toBe(403);
  });
  test('its own Origin is let in', async () => {
    expect((await get('/glance', known({ origin: `http://127.0.0.1:${page.port}` }))).status).toBe(200);
  });
  test.each([['cross-site', 403], ['same-site', 403], ['same-origin', 200], ['none', 200]])('Sec-Fetch-Site %s gives %i', async (site, status) => {
    expect((await get('/glance', known({ 'sec-fetch-site': site }))).status).toBe(status);
  });
  test('without a session the shop is closed, whatever is asked', async () => {
    for (const path of ['/glance', '/talk', '/events', '/kept/a', '/nothing']) expect((await get(path)).status, path).toBe(401);
    const said = await get('/say', { 'pawl-door': 'page', 'content-type': 'application/json' }, 'POST', '{}');
    expect(said.status).toBe(401);
    expect((await get('/glance', { cookie: cookie.replace(/.{6}$/, 'AAAAAA') })).status).toBe(401);
  });
  test('no answer carries a CORS header', async () => {
    for (const h of [{}, { origin: `http://127.0.0.1:${page.port}` }, { origin: 'https://evil.example' }]) {
      for (const method of ['GET', 'OPTIONS']) {
        const { headers } = await get('/glance', known(h), method);
        expect(Object.keys(headers).filter(k => k.startsWith('access-control'))).toEqual([]);
      }
    }
  });
});

describe('what a browser is told', () => {
  test('a strict policy, no framing, no sniffing, on every kind of answer', async () => {
    for (const [path, headers] of [['/', known()], ['/', {}], ['/page.css', {}], ['/glance', known()], ['/glance', { host: 'evil.example' }]] as const) {
      const got = await get(path, headers);
      const csp = String(got.headers['content-security-policy']);
      expect(csp).toContain("default-src 'self'");
      expect(csp).toContain("frame-ancestors 'none'");
      expect(csp).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|data:|\*/);
      expect(got.headers['x-content-type-options']).toBe('nosniff');
    }
  });
  test('the page holds no inline script or style, which the policy would refuse', async () => {
    const { body } = await get('/', known());
    expect(body).not.toMatch(/<script(?![^>]*src=)|<style|\sstyle=|\son\w+=/);
  });
});

describe('what can be fetched', () => {
  const climbs = ['/../session.ts', '/code/../../server.ts', '/code/..%2f..%2fserver.ts', '/code/%2e%2e/%2e%2e/server.ts', '/code/..%252f..%252fserver.ts', '/code/..\\..\\server.ts', '/code/..%5c..%5cserver.ts', '//etc/passwd', '/code/%00page.js', '/speech/../../../package.json', '/kept/..%2f..%2fpackage.json', '/kept/%2e%2e%2fpackage.json', '/code/page.js%00.css', '/.git/config', '/page.html', '/session.ts'];
  test.each(climbs)('%s gives nothing', async path => {
    const got = await get(path, known());
    expect([400, 404], got.body).toContain(got.status);
    expect(got.body).not.toMatch(/import |"name"|root:|\[core\]|font:/);
  });
  test('the page, its code and the speech detector are served from here, each as what it is', async () => {
    const types: [string, string][] = [['/code/page.js', 'text/javascript'], ['/page.css', 'text/css'], ['/mark.svg', 'image/svg+xml'], ['/speech/ort-wasm-simd-threaded.wasm', 'application/wasm'], ['/speech/ort-wasm-simd-threaded.mjs', 'text/javascript'], ['/speech/silero_vad_v5.onnx', 'application/octet-stream']];
    for (const [path, type] of types) {
      const got = await get(path, known());
      expect(got.status, path).toBe(200);
      expect(got.headers['content-type'], path).toContain(type);
      expect((await get(path, known({ 'if-none-match': String(got.headers.etag) }))).status).toBe(304);
    }
  });
});
