import type { EntryOf } from '../../model/entry.ts';
import type { Said, Thing } from '../shop.ts';
import { isFitting, isRemoving, isReplacing, isTightening, sameWork } from '../verbs.ts';

/** How a part comes to sit, where it was put, and that it left the shop: what that makes true of it. */
export function fitted(thing: Thing, entry: EntryOf<'fit'>, said: Said, note: number): void {
  thing.fit = { ...said, state: entry.state, with: entry.with };
  thing.jobs = thing.jobs.filter(job => !endsJob(entry.state, job.do));
  if (entry.state === 'off' || entry.state === 'tried') return;
  thing.out = undefined;
  thing.place = undefined;
  if (entry.state === 'temporary') return;
  thing.lastOn = said;
  thing.fault = undefined;
  thing.wants = [];
  if (entry.state === 'tight') thing.rechecks = thing.rechecks.filter(r => r.note === note || !isTightening(r.do));
}

/** Which open jobs a fitting ends: what is on ends "refit", what is tight ends "retorque" too, what is off ends "remove". */
function endsJob(state: EntryOf<'fit'>['state'], todo: string): boolean {
  switch (state) {
    case 'off': return isRemoving(todo);
    case 'tried': return sameWork(todo, 'try') || /^(mock|trial)/.test(todo);
    case 'temporary': return todo.startsWith('hang') || todo.startsWith('mock');
    case 'on': return isFitting(todo) || isReplacing(todo);
    case 'tight': return isFitting(todo) || isReplacing(todo) || isTightening(todo);
  }
}

export function stowed(thing: Thing, entry: EntryOf<'stow'>, said: Said): void {
  thing.place = { ...said, where: entry.where };
  thing.out = undefined;
}

export function sentOut(thing: Thing, entry: EntryOf<'out'>, said: Said): void {
  thing.out = { ...said, where: entry.where, until: entry.until, do: entry.do };
  thing.place = undefined;
  thing.jobs = thing.jobs.filter(job => !sameWork(job.do, 'send') && !/^(take|drop)/.test(job.do));
}
