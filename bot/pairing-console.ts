import type { Store } from '../domain/store/open.ts';
import { newPairingCode } from '../domain/store/people.ts';
import type { Reply } from './incoming.ts';
import type { Service } from './service.ts';

const ASKED = /^\s*(a |another |new )*pairing code[.?!]?\s*$/i;

/**
 * The service as the console has it: "pairing code" makes another single-use code, which ends the older one. It is answered past the
 * log, for a code is said at this console alone and kept nowhere.
 */
export function withPairing(service: Service, store: Store): Service {
  return { ...service, take: m => (ASKED.test(m.text) ? Promise.resolve(coded(newPairingCode(store, Date.now()))) : service.take(m)) };
}

const coded = (code: string): Reply => ({
  note: 0, entries: [], asks: [], answers: [], warnings: [], question: null, unread: [], buttons: [], files: [],
  say: `Pairing code: ${code}\nSend it to the bot as a message within 15 minutes.`,
});
