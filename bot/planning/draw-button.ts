import type { Button } from '../incoming.ts';

/** The button under what can be drawn; its words do the same when they are typed. */
export const DRAW_IT: Button = { label: 'Draw it', send: 'draw it' };
