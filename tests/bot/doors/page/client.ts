/** Opens the printed address as a browser does, and gives back the cookie it set, ready to be sent. */
export async function signIn(url: string): Promise<string> {
  const answer = await fetch(url, { redirect: 'manual' });
  if (answer.status !== 303) throw new Error(`the printed address answered ${answer.status}`);
  return answer.headers.getSetCookie()[0]!.split(';')[0]!;
}

export const DOOR = { 'Pawl-Door': 'page' };

interface Told { event: string; id?: string; data: unknown }

/** An open event stream, read by the rules of the HTML Living Standard §9.2.6 as far as the server uses them. */
export async function openEvents(base: string, cookie: string, lastId?: number): Promise<{ until(n: number, event?: string): Promise<Told[]>; close(): void; all: Told[] }> {
  const stop = new AbortController();
  const answer = await fetch(`${base}/events`, { headers: { cookie, ...(lastId === undefined ? {} : { 'Last-Event-ID': String(lastId) }) }, signal: stop.signal });
  if (answer.status !== 200) throw new Error(`events answered ${answer.status}`);
  const all: Told[] = [];
  let rest = '', wake = () => {};
  void (async () => {
    for await (const piece of answer.body!.pipeThrough(new TextDecoderStream())) {
      rest += piece;
      for (let end = rest.indexOf('\n\n'); end >= 0; end = rest.indexOf('\n\n')) {
        const fields = new Map(rest.slice(0, end).split('\n').map(l => [l.slice(0, l.indexOf(':')), l.slice(l.indexOf(':') + 2)] as const));
        rest = rest.slice(end + 2);
        if (fields.has('event')) all.push({ event: fields.get('event')!, id: fields.get('id'), data: JSON.parse(fields.get('data')!) });
      }
      wake();
    }
  })().catch(() => {});
  return {
    all,
    async until(n, event = 'talk') {
      for (;;) {
        const found = all.filter(t => t.event === event);
        if (found.length >= n) return found;
        await new Promise<void>(w => { wake = w; });
      }
    },
    close: () => stop.abort(),
  };
}
