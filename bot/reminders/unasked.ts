import { HOW_TO_ANSWER, occasionCaution, occasionLine, occasionWhy } from '../say/unasked.ts';
import { nameKey } from '../../domain/model/names.ts';
import { quietUntil } from './local-time.ts';
import type { About, Facts, Look, Occasion } from './occasion.ts';
import { back } from './occasions/back.ts';
import { cured } from './occasions/cured.ts';
import { help } from './occasions/help.ts';
import { late } from './occasions/late.ts';
import { morning } from './occasions/morning.ts';
import { rain } from './occasions/rain.ts';
import { recheck } from './occasions/recheck.ts';
import { temporary } from './occasions/temporary.ts';

/** What is looked for, in the order it is said. */
const LOOKS: readonly Look[] = [
  rain, // the clock is running
  morning, // it was asked for at this hour
  help, // somebody else's day
  recheck, // what was asked for by name
  back, late, cured, temporary,
];

/** Lines of one word; what is over waits for "more". */
const MOST_LINES = 3;

interface Item { key: string; stop: string; topic: Facts['topic'] }
/** Words to be said unasked: what they are about, and what "more" adds. */
export interface Word { items: Item[]; say: string; more: string[] }

/** What is due to be said now: not said before, not put off beyond now, not stopped, and not in the quiet hours but for a morning word at the chosen hour. */
export function dueNow(about: About): Occasion[] {
  const { at, now, settings } = about;
  const isQuiet = quietUntil(at, settings.quiet, now.zone) !== undefined;
  return LOOKS.flatMap(look => look(about)).filter(o => !settings.off.has(o.topic) && !isOffAbout(o, settings.offAbout) && (!isQuiet || o.topic === 'morning') && isOpen(o, about));
}

/** "The gasket" covers the water pump's gasket as well: whatever ends in the name. */
function isOffAbout(o: Occasion, names: ReadonlySet<string>): boolean {
  const key = nameKey('part' in o && o.part ? o.part : 'item' in o ? o.item : '');
  return key !== '' && [...names].some(n => key === n || key.endsWith(` ${n}`));
}

function isOpen({ key, stop }: Occasion, { at, mark }: About): boolean {
  const said = mark(key);
  if (said?.stopped || mark(stop)?.stopped) return false;
  return said?.putOffUntil !== undefined ? Date.parse(said.putOffUntil) <= at : said?.saidAt === undefined;
}

/** Several occasions at once are one word of a few lines; all of them count as said. `first`: the person has never had one. */
export function wordOf(due: readonly Occasion[], about: About, first: boolean): Word | undefined {
  if (!due.length) return undefined;
  const saying = { at: about.now.at, zone: about.now.zone };
  const [now, rest] = [due.slice(0, MOST_LINES), due.slice(MOST_LINES)];
  const cautions = [...new Set(due.flatMap(o => occasionCaution(o) ?? []))];
  const more = [...new Set([...rest.map(o => occasionLine(o, saying)), ...due.flatMap(o => occasionWhy(o, saying))])];
  const lines = [...now.map(o => occasionLine(o, saying)), ...cautions, ...(rest.length ? [`${rest.length} more; say "more".`] : []), ...(first ? [HOW_TO_ANSWER] : [])];
  return { items: due.map(({ key, stop, topic }) => ({ key, stop, topic })), say: lines.join('\n'), more };
}
