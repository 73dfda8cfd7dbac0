import type { Direction } from './simple.ts';

/** What a rule is told: today, which way an open choice goes, the whole line and where it matched. */
export interface Say { today: number; dir: Direction; line: string; m: RegExpExecArray }
export type Days = [from: number, to: number] | undefined;
/** A phrase and the days it names. */
export interface DayRule { name: string; pattern: RegExp; days(say: Say): Days }

export const rx = (s: string): RegExp => new RegExp(s, 'g');
export const one = (day: number): Days => [day, day];
