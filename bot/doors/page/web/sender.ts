import { post } from './post.ts';
import type { Talk } from './shapes.ts';
import type { Keep, Unsent } from './unsent.ts';

type Lane = 'words' | 'files';
const LANES: Lane[] = ['words', 'files'];
const lane = (m: Unsent): Lane => (m.kind === 'words' ? 'words' : 'files');
const SOONEST = 1000, LATEST = 15_000;

interface SenderEvents {
  /** The messages that wait, oldest first, whenever they change. */
  waiting(items: Unsent[]): void;
  /** Acknowledged; `mine` when it was said in this tab. */
  taken(key: string, talk: Talk, mine: boolean): void;
  /** Why nothing gets through at the moment; empty when it does. */
  held(why: string): void;
}
interface Sender { put(m: Omit<Unsent, 'key' | 'at'>): Promise<void>; drop(key: string): Promise<void>; kick(): void }

/**
 * Sends what is kept, each kind in its order, one at a time over all tabs of the browser, until it is acknowledged. Words have their own
 * lane, so that a question is answered while sound is still being heard.
 */
export function sender(keep: Keep, on: SenderEvents): Sender {
  const mine = new Set<string>();
  const tabs = new BroadcastChannel('pawl-sent');
  const delay: Record<Lane, number> = { words: SOONEST, files: SOONEST };
  const timer: Partial<Record<Lane, number>> = {};
  const shown = async () => on.waiting(await keep.all());
  const taken = (key: string, talk: Talk) => { on.taken(key, talk, mine.delete(key)); void shown(); };
  tabs.onmessage = ({ data }: MessageEvent<{ key: string; talk: Talk }>) => taken(data.key, data.talk);

  /** True when the next one may be tried at once. */
  const sendOne = async (m: Unsent): Promise<boolean> => {
    const sent = await post(m);
    if ('again' in sent) { on.held(sent.again); return false; }
    on.held('');
    delay[lane(m)] = SOONEST;
    if ('refused' in sent) { await keep.put({ ...m, refused: sent.refused }); await shown(); return true; }
    await keep.drop(m.key);
    tabs.postMessage({ key: m.key, talk: sent.talk });
    taken(m.key, sent.talk);
    return true;
  };
  const drain = async (l: Lane): Promise<void> => {
    for (;;) {
      const next = (await keep.all()).find(m => lane(m) === l && !m.refused);
      if (!next) return;
      if (await sendOne(next)) continue;
      clearTimeout(timer[l]);
      timer[l] = setTimeout(() => void run(l), delay[l]);
      delay[l] = Math.min(LATEST, delay[l] * 2);
      return;
    }
  };
  const run = (l: Lane) => navigator.locks.request(`pawl-send-${l}`, () => drain(l));
  const kick = () => { for (const l of LANES) void run(l); };
  return {
    async put(m) {
      const whole: Unsent = { ...m, key: crypto.randomUUID(), at: Date.now() };
      mine.add(whole.key);
      await keep.put(whole);
      await shown();
      void run(lane(whole));
    },
    async drop(key) { await keep.drop(key); await shown(); },
    kick() { void shown(); kick(); },
  };
}
