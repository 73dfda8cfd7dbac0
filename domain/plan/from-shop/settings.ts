import type { FreeHours } from '../calendar.ts';
import type { Climate, ForecastHour } from '../forecast.ts';
import type { Site } from '../input.ts';

/** What the planner is told beside the log. */
export interface PlanSettings {
  /** The person's hours, and how they are known. */
  hours?: Pick<FreeHours, 'weekly' | 'exceptions'>;
  hoursFrom?: 'said' | 'learned';
  /** Ids of usual orders that the person turned down. */
  refused?: ReadonlySet<string>;
  forecast?: readonly ForecastHour[];
  climate?: Climate;
  site?: Site;
}

/** Until the person says, or the log shows, when there is time: two hours on weekday evenings, Saturday from nine to one. It is always said to be assumed. */
export const ASSUMED_HOURS: FreeHours['weekly'] = [
  ...[1, 2, 3, 4, 5].map(weekday => ({ weekday, from: '18:00', to: '20:00' })), { weekday: 6, from: '09:00', to: '13:00' },
];

/** Where nobody promised help, one Saturday morning a week is counted on for what takes two. It is said to be assumed. */
export const ASSUMED_HELP: FreeHours['weekly'] = [{ weekday: 6, from: '00:00', to: '24:00' }];
