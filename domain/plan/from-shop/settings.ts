import type { FreeHours } from '../calendar.ts';
import type { Climate, ForecastHour } from '../forecast.ts';
import type { Site } from '../input.ts';

/** What the planner is told beside the log. */
export interface PlanSettings {
  /** The person's hours, and how they are known. */
  hours?: Pick<FreeHours, 'weekly' | 'exceptions'>;
  hoursFrom?: 'said' | 'learned' | 'assumed';
  /** Ids of usual orders that the person turned down. */
  refused?: ReadonlySet<string>;
  /** Whether there is a hoist to lift with; undefined: never said, and one is counted on. */
  hoist?: boolean;
  /** No help is counted on but what was promised. */
  alone?: boolean;
  forecast?: readonly ForecastHour[];
  climate?: Climate;
  site?: Site;
}

/** Until the person says, or the log shows, when there is time: two hours on weekday evenings, Saturday from nine to one. It is always said to be assumed. */
export const ASSUMED_HOURS: FreeHours['weekly'] = [
  ...[1, 2, 3, 4, 5].map(weekday => ({ weekday, from: '18:00', to: '20:00' })), { weekday: 6, from: '09:00', to: '13:00' },
];

/**
 * Help that is counted on where nobody promised any and a job takes two: the day of the week with most hours, Saturday first. It is said to
 * be assumed.
 */
export function assumedHelp(weekly: FreeHours['weekly']): FreeHours['weekly'] {
  const hours = (weekday: number): number => weekly.filter(w => w.weekday === weekday).reduce((sum, w) => sum + minutes(w.to) - minutes(w.from), 0);
  const [weekday] = [6, 7, 5, 4, 3, 2, 1].sort((a, b) => hours(b) - hours(a));
  return weekday !== undefined && hours(weekday) > 0 ? [{ weekday, from: '00:00', to: '24:00' }] : [];
}
const minutes = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));

/** On a day that somebody comes to help the person is there too, whatever the usual week says. */
export const HELPED_HOURS = { from: '09:00', to: '13:00' };
