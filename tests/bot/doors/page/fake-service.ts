import type { Incoming, Reply } from '../../../../bot/incoming.ts';
import type { DoorMessage, Glance, Progress, Service, Talk } from '../../../../bot/service.ts';

export interface FakeService extends Service {
  taken: DoorMessage[];
  exchanges: Talk[];
  panels: Glance[];
  files: Map<string, { bytes: Uint8Array; type: string }>;
  /** Fails the next `n` takes, as a full disk would. */
  failNext(n: number): void;
  /** An exchange that came by another door. */
  elsewhere(door: Incoming['door'], text: string, say: string, buttons?: Reply['buttons']): Talk;
  /** Tells an exchange again, changed. */
  tell(t: Talk): void;
  progress(key: string, text: string, more?: Partial<Progress>): void;
  listeners(): number;
}

const PANELS: Glance[] = [
  { title: 'Next', say: 'Next:', lines: ['Fit the hub seal (everything for it is here)', 'Fill the radiator'] },
  { title: 'Holding up', say: 'Radiator waits:', lines: ['Fan belt is late, was due Thu 19 Mar: ask the farm store', 'Thermostat not bought yet: buy it'] },
  { title: 'To get', say: '3 things to get:', lines: ['Thermostat, for the radiator', 'Pump gasket', '2 hub bearings, 35 by 72: ordered from the bearing house due Tue 24 Mar, for the left front wheel'] },
  { title: 'Not for good', say: '1 thing is only on for now:', lines: ['Bonnet, with two bolts, since Mon 2 Mar'] },
  { title: 'Look again', say: 'None due yet; to come:', lines: ['Tighten the wheel nuts: after 10 hours running'] },
];

const ANSWER: Record<string, [string, Reply['buttons']?]> = {
  'which wheel': ['Which wheel do you mean?', [{ label: 'Left front wheel', send: 'left front wheel' }, { label: 'Right front wheel', send: 'right front wheel' }]],
  'left front wheel': ['Noted: left front wheel on for good.', [{ label: 'Strike it', send: 'scratch that' }]],
};

/** The program behind the page, in memory and without understanding: enough to see what a door hands over and shows. */
export function fakeService(): FakeService {
  const talkers = new Set<(t: Talk) => void>();
  const watchers = new Set<(p: Progress) => void>();
  const byKey = new Map<string, Talk>();
  let failing = 0;
  const record = (t: Omit<Talk, 'id'>): Talk => {
    const talk = { id: fake.exchanges.length + 1, ...t };
    fake.exchanges.push(talk);
    for (const l of talkers) l(talk);
    return talk;
  };
  const fake: FakeService = {
    taken: [], exchanges: [], panels: PANELS, files: new Map(),
    failNext(n) { failing = n; },
    async take(m) {
      if (failing > 0) { failing--; throw new Error('disk full'); }
      let talk = byKey.get(m.key);
      if (!talk) {
        fake.taken.push(m);
        const names = (m.files ?? []).map((f, i) => { const name = `${m.key.replace(/\W/g, '')}${i}`; fake.files.set(name, { bytes: f.bytes, type: f.use === 'photo' ? 'image/png' : 'audio/wav' }); return name; });
        const heard = m.files?.some(f => f.use === 'sound') ? `heard ${m.files[0]!.bytes.byteLength} bytes` : m.text;
        const [say, buttons] = ANSWER[heard] ?? [`Noted: ${heard}`, [{ label: 'Strike it', send: 'scratch that' }]];
        talk = record({ at: m.at, door: m.door, text: heard, say, buttons: buttons ?? [], files: names });
        byKey.set(m.key, talk);
      }
      return { note: talk.id, entries: [], asks: [], answers: [], warnings: [], question: null, unread: [], say: talk.say, buttons: talk.buttons, files: talk.files };
    },
    glance: () => fake.panels,
    talk: (after, limit) => (after === undefined ? fake.exchanges.slice(-limit) : fake.exchanges.filter(t => t.id > after).slice(0, limit)),
    onTalk(l) { talkers.add(l); return () => { talkers.delete(l); }; },
    onProgress(l) { watchers.add(l); return () => { watchers.delete(l); }; },
    media: name => fake.files.get(name),
    elsewhere: (door, text, say, buttons = []) => record({ at: '2026-03-24T18:40:00+01:00', door, text, say, buttons, files: [] }),
    tell(t) { fake.exchanges[t.id - 1] = t; for (const l of talkers) l(t); },
    progress(key, text, more) { for (const w of watchers) w({ key, text, door: 'page', ...more }); },
    listeners: () => talkers.size + watchers.size,
  };
  return fake;
}
