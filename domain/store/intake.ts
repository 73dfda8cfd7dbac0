import { queueIn } from './queue.ts';

/**
 * Messages that came in, written down before anything else is done with them. Keyed by the message's natural identity (chat and
 * message id; edit and edit date; button press id; the page's UUID), so that a repeat is ignored whenever it comes.
 */
export const intake = queueIn('intake');
