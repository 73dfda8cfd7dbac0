import type { Glance, Progress, Talk } from './shapes.ts';

interface LiveEvents {
  talk(t: Talk): void;
  glance(g: Glance[]): void;
  progress(p: Progress): void;
  /** The stream is up, or it is lost. */
  line(up: boolean): void;
}
type Word = { [K in keyof LiveEvents]: { kind: K; data: Parameters<LiveEvents[K]>[0] } }[keyof LiveEvents] | { kind: 'who' };

const AGAIN_MS = 2000;

/**
 * What happens at every door, as it happens. A browser allows six connections to one server, so one tab holds the stream and passes it on
 * to the others; when it is closed another takes over from the last note it has. `last`: the number of the newest exchange shown.
 */
export function live(on: LiveEvents, last: () => number): void {
  const tabs = new BroadcastChannel('pawl-live');
  let up = false, leads = false;
  const hear = (w: Word) => { if (w.kind !== 'who') (on[w.kind] as (d: unknown) => void)(w.data); };
  const tell = (w: Word) => { hear(w); tabs.postMessage(w); };
  const setLine = (now: boolean) => { if (now !== up || !now) { up = now; tell({ kind: 'line', data: up }); } };
  tabs.onmessage = ({ data }: MessageEvent<Word>) => {
    if (data.kind !== 'who') hear(data);
    else if (leads) tabs.postMessage({ kind: 'line', data: up } satisfies Word);
  };
  const listen = () => {
    const stream = new EventSource(`/events?after=${last()}`);
    stream.onopen = () => setLine(true);
    stream.onerror = () => {
      setLine(false);
      // A refused stream is not tried again by the browser itself.
      if (stream.readyState === EventSource.CLOSED) setTimeout(listen, AGAIN_MS);
    };
    for (const kind of ['talk', 'glance', 'progress'] as const) stream.addEventListener(kind, e => tell({ kind, data: JSON.parse(e.data) } as Word));
  };
  tabs.postMessage({ kind: 'who' } satisfies Word);
  void navigator.locks.request('pawl-events', () => { leads = true; listen(); return new Promise<never>(() => {}); });
}
