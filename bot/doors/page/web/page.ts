import { aloud, noVoice } from './aloud.ts';
import { part, trouble } from './dom.ts';
import { showGlance } from './glance.ts';
import { handsFree } from './hands-free.ts';
import { live } from './live.ts';
import { whyLost } from './post.ts';
import { pushToTalk } from './push.ts';
import { sayForm } from './say-form.ts';
import { sender } from './sender.ts';
import type { Glance, Talk } from './shapes.ts';
import { talkView } from './talk.ts';
import { openKeep, type Unsent } from './unsent.ts';
import { keyOf, showWaiting } from './waiting.ts';

const PAGE = 40;
const LOOK_AGAIN_MS = 300;
const keep = await openKeep();
const voice = aloud();
const progress = new Map<string, string>();
let waiting: Unsent[] = [];
let held = '';
/** Whether there are exchanges before the oldest shown. */
let more = false;

const view = talkView(text => say(text));
const out = sender(keep, {
  waiting(items) { waiting = items; redraw(); },
  taken(key, talk, mine) { progress.delete(`page:${key}`); arrived(talk); if (mine) voice.say(talk.say); },
  held(why) { held = why; part('line').textContent = why; redraw(); },
});

function redraw(): void {
  const before = part('waiting').childElementCount;
  showWaiting(waiting, progress, held, {
    back(m) { form.fill(m.text); void out.drop(m.key); },
    drop(m) { void out.drop(m.key); },
  });
  part('older').hidden = !more;
  part('empty').hidden = view.newest() > 0 || waiting.length > 0;
  if (waiting.length > before) view.toEnd();
}

function say(text: string): void {
  voice.hush();
  void out.put({ kind: 'words', text });
}

let looking = 0;
/** Shows an exchange and, when it is new, says its reply to a screen reader. It may have struck an older one, so those are looked at again. */
function arrived(t: Talk): void {
  if (!view.show(t)) return;
  part('told').textContent = t.say;
  clearTimeout(looking);
  looking = setTimeout(() => void refreshTalk(), LOOK_AGAIN_MS);
}

async function fetched<T>(path: string): Promise<T | undefined> {
  try { const r = await fetch(path); return r.ok ? await r.json() as T : undefined; } catch { return undefined; }
}

/** Everything as it stands now: at the start, and again when the stream was lost, as exchanges may have been struck or finished meanwhile. */
async function refresh(): Promise<void> {
  const [glance] = await Promise.all([fetched<Glance[]>('/glance'), refreshTalk()]);
  if (glance) showGlance(glance);
}

async function refreshTalk(): Promise<void> {
  const talk = await fetched<Talk[]>(`/talk?limit=${PAGE}`);
  // Only the first look tells whether there is more; later ones see the newest exchanges alone.
  if (!view.newest()) more = talk?.length === PAGE;
  for (const t of talk ?? []) view.show(t);
  redraw();
}

const form = sayForm(say, (file, text) => { void out.put({ kind: 'photo', text, file }); });
const sendSound = (file: Blob, seconds: number) => { void out.put({ kind: 'sound', text: '', file, seconds }); };
// One at a time: what is said hands free would come twice.
const push = pushToTalk(() => { if (hands.on) trouble('It is listening hands free already.'); voice.hush(); return !hands.on; }, sendSound);
const hands = handsFree(() => !push.on, () => voice.speaking(), sendSound);
const stopListening = () => { void push.stop(); void hands.stop(); voice.hush(); };

part('aloud').addEventListener('click', () => {
  const none = noVoice();
  trouble(none ?? '');
  voice.on = !none && !voice.on;
  if (!voice.on) voice.hush();
  part('aloud').setAttribute('aria-pressed', String(voice.on));
});
part('stop').addEventListener('click', stopListening);
addEventListener('keydown', e => { if (e.key === 'Escape') stopListening(); });
part('older').addEventListener('click', () => {
  void fetched<Talk[]>(`/talk?before=${view.oldest() ?? 0}&limit=${PAGE}`).then(older => {
    if (!older) return;
    for (const t of older) view.show(t);
    more = older.length === PAGE;
    redraw();
  });
});
for (const again of ['online', 'focus']) addEventListener(again, () => { if (waiting.length) out.kick(); });

await refresh();
view.toEnd();
if (!keep.lasting) trouble('This browser window keeps nothing: a note that is not sent yet is lost when it is closed.');
out.kick();
live({
  talk: arrived,
  glance: showGlance,
  progress(p) {
    if (p.done && !waiting.some(m => keyOf(m) === p.key)) progress.delete(p.key);
    else progress.set(p.key, p.text);
    redraw();
  },
  line(up) {
    part('line').textContent = held;
    if (up) { progress.clear(); void refresh(); out.kick(); } else void whyLost().then(why => { part('line').textContent = why; });
  },
}, view.newest);
document.documentElement.dataset.ready = 'yes';
