import { z } from 'zod';
import type { AskOf } from '../../domain/model/ask.ts';
import { Ask } from '../../domain/model/ask.ts';
import type { DaySpan } from '../../domain/answers/ahead.ts';
import type { Supposed } from '../../domain/answers/what-if.ts';

/** What takes longer than a breath and is handed out by a turn: a finish date, a supposition, days to order by, the days ahead, a drawing. `machine`: the chat's. */
export type Task =
  | { kind: 'finish'; ask: AskOf<'finish'>; machine?: string }
  | { kind: 'whatIf'; words: string; supposed: Supposed; machine?: string }
  | { kind: 'orderBy'; item?: string; machine?: string }
  | { kind: 'ahead'; span: DaySpan; machine?: string }
  | { kind: 'draw'; drawing: Drawing };

/** What can be drawn: what holds up a part, or the weeks ahead. */
export const Drawing = z.object({ ask: Ask, machine: z.string().optional() });
export type Drawing = z.infer<typeof Drawing>;
