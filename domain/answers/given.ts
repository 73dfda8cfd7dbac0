import type { Past } from '../log/past.ts';
import type { PlanSettings } from '../plan/from-shop/settings.ts';

/** The moment of the question: ISO with offset, and the person's zone by its IANA name. */
export interface Now { at: string; zone: string }

/** What an answer may need beside the state: the chat's current machine, what was said word for word, money a mile driven costs, what the planner is told. */
export interface More { past: Past; machine?: string; mileRate?: number; planning?: PlanSettings }
