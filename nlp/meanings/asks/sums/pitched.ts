import type { Scope } from './scope.ts';

/** "M12 by 1.75 bolts", "M10 thread pitch 1.5", "M8 with pitch 1.25": the pitch that is said after a metric size belongs to it. */
export function pitched(scope: Scope, thread: { end: number; value: { size: string } }): string {
  const { size } = thread.value, pitch = /^M[\d.]+$/.test(size) ? scope.numbers().find(n => n.start >= thread.end && n.value < 7 && /^ ?(?:by|x|times|(?:with (?:an? |the )?)?(?:thread )?pitch(?: of| is)?) $/.test(scope.desk.text.slice(thread.end, n.start))) : undefined;
  if (!pitch) return size;
  scope.take(pitch);
  return `${size}x${pitch.value}`;
}
