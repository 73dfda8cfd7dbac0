import { leansOn } from '../../nlp/hear/lean.ts';
import { contextOf } from './context.ts';
import { readSafely } from './read-safely.ts';
import type { Turn } from './types.ts';

/** The words that what a spoken note says leans on and that may be misheard; empty for a typed note, and where nothing would be logged. */
export function leansOf(turn: Turn): string[] {
  const { spoken, text } = turn.incoming;
  if (!spoken || !text.trim()) return [];
  const context = contextOf(turn);
  const names = [...(context.machines ?? []), ...(context.parts ?? []), ...(context.places ?? [])];
  return leansOn(text, readSafely(text, context, turn.deps), { unsure: spoken.unsure, overNoise: spoken.overNoise, names });
}
