import type { Store } from '../domain/store/open.ts';
import { newPairingCode, pairedPeople, revoke } from '../domain/store/people.ts';
import { DOOR } from './doors/telegram/who.ts';
import type { Reply } from './incoming.ts';
import type { Service } from './service.ts';

const UNPAIR = /^\s*unpair( (all|(the |my )?(phone|chat|bot)))?[.?!]?\s*$/i;
const ASKED = /^\s*(a |another |new )*pairing code[.?!]?\s*$/i;

/**
 * The service as the console has it: "pairing code" makes another single-use code, which ends the older one; "unpair" shuts out every
 * paired phone, for one may be lost. Both are answered past the log: a code is said at this console alone and kept nowhere.
 */
export function withPairing(service: Service, store: Store): Service {
  return { ...service, take: m => (ASKED.test(m.text) ? Promise.resolve(coded(newPairingCode(store, Date.now()))) : UNPAIR.test(m.text) ? Promise.resolve(unpaired(store)) : service.take(m)) };
}

const coded = (code: string): Reply => said(`Pairing code: ${code}\nSend it to the bot as a message within 15 minutes.`);

function unpaired(store: Store): Reply {
  const people = pairedPeople(store, DOOR), at = new Date().toISOString();
  for (const person of people) revoke(store, DOOR, person, at);
  return said(people.length ? 'Unpaired: the bot answers nobody now. Say "pairing code" for a new one.' : 'Nobody is paired.');
}

const said = (say: string): Reply => ({ note: 0, entries: [], asks: [], answers: [], warnings: [], question: null, unread: [], buttons: [], files: [], say });
