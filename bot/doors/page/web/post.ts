import type { Talk } from './shapes.ts';
import type { Unsent } from './unsent.ts';

/** What came of sending: taken, to be tried again (with what to tell the person), or never going to be taken. */
type Sent = { talk: Talk } | { again: string } | { refused: string };

const DOOR = { 'Pawl-Door': 'page' };
const NO_ANSWER = 'Pawl does not answer. This page keeps what you say and sends it when it does.';

function request(m: Unsent): [string, RequestInit] {
  if (m.kind === 'words') {
    const body = JSON.stringify({ key: m.key, at: m.at, text: m.text });
    return ['/say', { body, headers: { ...DOOR, 'Content-Type': 'application/json' } }];
  }
  if (m.kind === 'sound') return ['/sound', { body: m.file, headers: { ...DOOR, 'Content-Type': 'audio/wav', 'Pawl-Key': m.key, 'Pawl-At': String(m.at) } }];
  const form = new FormData();
  form.set('key', m.key);
  form.set('at', String(m.at));
  form.set('caption', m.text);
  form.set('photo', m.file!, 'photo');
  return ['/photo', { body: form, headers: DOOR }];
}

/** Why the server can't be had: it is not there, or it doesn't know this browser any more; empty when it can. */
export async function whyLost(): Promise<string> {
  try {
    const answer = await fetch('/glance');
    return answer.ok ? '' : (await answer.json() as { error: string }).error;
  } catch { return NO_ANSWER; }
}

/** Sends one message. Never rejects. */
export async function post(m: Unsent): Promise<Sent> {
  const [path, init] = request(m);
  let answer: Response;
  try { answer = await fetch(path, { ...init, method: 'POST' }); } catch { return { again: NO_ANSWER }; }
  const said = await answer.json().catch(() => undefined) as { talk?: Talk; error?: string } | undefined;
  if (answer.ok && said?.talk) return { talk: said.talk };
  const error = said?.error ?? NO_ANSWER;
  // These say that this very message will not do; everything else may pass.
  return [400, 413, 415].includes(answer.status) ? { refused: error } : { again: error };
}
