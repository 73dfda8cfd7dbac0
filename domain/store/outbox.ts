import { queueIn } from './queue.ts';

/** Replies and unasked words on their way out, with a loop of their own, so that a door that is told to wait never blocks the intake. */
export const outbox = queueIn('outbox');
