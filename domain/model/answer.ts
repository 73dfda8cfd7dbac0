import type { SumAnswer } from '../sums/answer.ts';

/**
 * Answers, one shape an ask kind: facts without words, so that every door says the same. Unknown things come back empty, never invented.
 * Dates are YYYY-MM-DD, moments ISO with offset, money in the shop's currency.
 */
export type CauseKind = 'not bought' | 'on order' | 'late' | 'out' | 'temporary' | 'rule' | 'wait' | 'recheck' | 'help' | 'weather' | 'not done';

export interface Cause {
  cause: CauseKind;
  /** The thing that stands in the way: a part, an item, a job. */
  what: string;
  /** What the person can do about it, base verb first; absent where only waiting helps. */
  act?: string;
  /** The earliest day it can clear, where one is known. */
  clears?: string;
  /** Nobody named that day: it is how long such a thing usually takes. */
  guessed?: boolean;
  causes: Cause[];
}

export interface BlockedAnswer { kind: 'blocked'; part: string; /** null: a part never heard of. */ clear: boolean | null; causes: Cause[]; /** Open works that the usual order of assembly has before it; the person's own causes stand alone in `causes`. `rule`: its id. */ usual?: { first: string; why: string; source: string; rule: string }[]; /** Coats and glues laid on it that by their usual time (hours, at about 20 °C) are not ready yet: what for (`dry`, `cure`) and the day they are. */ curing?: { coat: string; lag: string; hours: number; until: string }[] }
export interface BuyItem { item: string; qty?: number; spec?: string; status: 'needed' | 'ordered' | 'late'; for?: string; expected?: string; price?: number; source?: string; machine?: string }
export interface BuyAnswer { kind: 'buy'; status?: 'needed' | 'ordered' | 'late'; part?: string; items: BuyItem[] }
export interface NextJob { do: string; part?: string; why: string[]; machine?: string }
export interface NextAnswer { kind: 'next'; jobs: NextJob[]; minutes?: number; place?: 'indoors' | 'outdoors' }
export interface WhereAnswer { kind: 'where'; part: string; where: string | null; since?: string; /** Out for work, and due back. */ out?: { where?: string; until?: string }; /** How it sits on the machine. */ fit?: 'off' | 'tried' | 'temporary' | 'on' | 'tight' }
export interface WasReading { what: string; value: number; unit?: string; asWas?: boolean; at?: string; part?: string }
export interface WasHowAnswer { kind: 'wasHow'; part: string; what?: string; readings: WasReading[]; notes: string[] }
export interface ProvisionalItem { part: string; state: 'tried' | 'temporary'; since: string; with?: string; machine?: string }
export interface ProvisionalAnswer { kind: 'provisional'; part?: string; items: ProvisionalItem[] }
export interface DueItem { part?: string; do: string; /** "now", a day, or "after 20 hours running" with what is left. */ when: string; overdue?: boolean; machine?: string }
/** A look that the trade takes after such a part went on, which nobody asked for yet. */
export interface UsualLook { do: string; part: string; after: number; unit: 'hours' | 'days' | 'weeks' | 'months' | 'miles'; why: string; source: string; machine?: string }
export interface DueAnswer { kind: 'due'; items: DueItem[]; usual: UsualLook[] }
export interface HistoryItem { at: string; text: string; note?: number }
export interface HistoryAnswer { kind: 'history'; part?: string; from?: string; to?: string; items: HistoryItem[]; /** Older ones were left out. */ older?: boolean }
export interface SpentItem { item: string; price: number; source?: string; at: string }
export interface SpentAnswer { kind: 'spent'; part?: string; total: number; items: SpentItem[]; /** Ordered, not yet paid for by arrival. */ onOrder?: number; unpriced?: string[]; /** Older purchases were left out of the list. */ older?: boolean }
export interface TimeSpentAnswer { kind: 'timeSpent'; part?: string; from?: string; to?: string; hours: number }
export interface LandedQuote { source?: string; landed: number; price: number; shipping?: number; qty?: number; at?: string }
export interface CheapestAnswer { kind: 'cheapest'; item: string; best: LandedQuote | null; others: LandedQuote[] }
/** From and to are days (whole days, the last one included) or moments. */
export interface ForecastWindow { from: string; to: string; fit: boolean; why: string[] }
/** A surface measured today: °C, how far it is over the dew point, and whether that is enough for a coat now. */
export interface SurfaceMeasured { surfaceC: number; dewC?: number; margin?: number; fit?: boolean; at: string }
export interface ForecastAnswer {
  kind: 'forecast';
  for?: string;
  windows: ForecastWindow[];
  /** Where it comes from: `said` by the person, the credit of the weather service, or both. */
  basis: string;
  /** How old a fetched forecast is. */
  age?: string;
  /** It is for a coat: the surface wants measuring before it is laid on. */
  coat?: boolean;
  /** The words of `why` are in °F, mph and inches; the figures of `measured` are in °C all the same. */
  units?: 'imperial';
  measured?: SurfaceMeasured;
  caution?: string;
}
/** `chance`: of being done by the end of the day `by`, where the question named one (0 to 1). */
export interface FinishAnswer { kind: 'finish'; part?: string; by?: string; p50: string | null; p80: string | null; driver: string | null; chance: number | null; why?: string }
/** What a supposition would change; nothing of it is kept. `sooner`, `later`: works that can be done at least half a day sooner or later. */
export interface WhatIfAnswer {
  kind: 'whatIf'; supposed: string; machine?: string; before: { p50: string | null; p80: string | null };
  after: { p50: string | null; p80: string | null; driver: string | null }; sooner: string[]; later: string[]; why?: string;
}
/** The last day on which each thing can be ordered without moving the four-in-five finish; `late`: it moves it even when ordered today. */
export interface OrderByAnswer { kind: 'orderBy'; item?: string; items: { item: string; by: string; late?: boolean }[]; why?: string }
/** The work as it is laid out, day by day; `from`, `to`: what was asked for. `stuck`: works that can't be given a day. */
export interface AheadAnswer { kind: 'ahead'; from?: string; to?: string; days: { day: string; works: string[] }[]; stuck: string[]; why?: string }
/** What of the shop is so: away for work, left alone to cure, in an order of the person's own, in need of a second pair of hands. `until`: YYYY-MM-DD. */
export type ListOf = 'out' | 'curing' | 'rules' | 'hands';
export interface ListItem { what: string; machine?: string; where?: string; do?: string; until?: string; /** By the usual time of what was laid on, not by the person's word. */ usual?: boolean; /** A rule that holds up nothing any more. */ met?: boolean }
export interface ListAnswer { kind: 'list'; of: ListOf; items: ListItem[] }
/** How one thing stands now, whatever of it was said; days are of the saying. */
export interface ThingState {
  part: string;
  fit?: { state: 'off' | 'tried' | 'temporary' | 'on' | 'tight'; with?: string; since: string };
  finding?: { condition: string; verdict?: 'good' | 'reuse' | 'watch' | 'repair' | 'replace'; since: string };
  where?: string;
  out?: { where?: string; until?: string };
  /** Works still to do on it, verbs; those begun in `begun`. */
  jobs: string[];
  begun: string[];
  supply: BuyItem[];
  rechecks: string[];
}
export interface StateAnswer { kind: 'state'; part: string; things: ThingState[] }
export interface PictureAnswer { kind: 'picture'; part: string; files: string[] }
export type Answer =
  | BlockedAnswer | BuyAnswer | NextAnswer | WhereAnswer | WasHowAnswer | ProvisionalAnswer | DueAnswer | HistoryAnswer | SpentAnswer
  | TimeSpentAnswer | CheapestAnswer | ForecastAnswer | FinishAnswer | WhatIfAnswer | OrderByAnswer | AheadAnswer | ListAnswer | StateAnswer | PictureAnswer | SumAnswer;

export type AnswerOf<K extends Answer['kind']> = Extract<Answer, { kind: K }>;
