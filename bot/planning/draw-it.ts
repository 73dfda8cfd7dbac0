import type { Ask } from '../../domain/model/ask.ts';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { contextOf } from '../turn/context.ts';
import { readSafely } from '../turn/read-safely.ts';
import { askToDraw } from './draw-named.ts';
import { Drawing } from './task.ts';

const WORDS = /^(?:please |can you |could you |now )?(?:draw (?:it|that|this|me (?:a|the) (?:picture|drawing)|(?:a|the) (?:picture|drawing|plan))|sketch it|show me (?:a|the) (?:drawing|sketch|plan)|make (?:a|me a) (?:drawing|picture)(?: of (?:it|that))?)(?: please)?[.?!]*$/i;

/** Where it is kept what was last answered that can be drawn, a chat. */
const nameFor = (chat: string): string => `drawable ${chat}`;

/** Keeps what "draw it" would mean after these answers. */
export function keepDrawable(turn: Turn, asks: readonly Ask[]): void {
  const ask = asks.findLast(a => a.kind === 'blocked' || a.kind === 'finish' || a.kind === 'spent' || a.kind === 'timeSpent');
  if (!ask) return;
  const { span: _, ...bare } = ask;
  writeSetting(turn.deps.log.store, nameFor(turn.incoming.chat), JSON.stringify({ ask: bare, machine: turn.machine } satisfies Drawing));
}

/** "Draw it": what was last answered; "draw what holds up the radiator", "chart of the money": what is named. Handed out as a picture. Undefined: not these words. */
export function drawAsked(turn: Turn): TurnOut | undefined {
  const { note, incoming: { at, chat, text }, deps: { log } } = turn;
  const named = askToDraw(text);
  if (!named && !WORDS.test(text.trim())) return undefined;
  const ask = named && 'holdsUp' in named ? blockedAsk(turn, named.holdsUp) : named;
  if (ask) keepDrawable(turn, [ask]);
  const held = readSetting(log.store, nameFor(chat));
  const drawing = held === undefined ? undefined : Drawing.safeParse(JSON.parse(held)).data;
  if (!drawing || named && !ask) return { reply: compose({ note: note.id, at, lines: ['Ask what holds something up, when it will be done, or what it cost or took; then I can draw it.'] }) };
  return { reply: { ...compose({ note: note.id, at, lines: ['Drawing it…'] }), later: [{ kind: 'draw', drawing }] } };
}

/** The part in question as the reader of notes takes it, with its known name. */
const blockedAsk = (turn: Turn, part: string): Ask | undefined =>
  readSafely(`what is holding up the ${part}?`, contextOf(turn), turn.deps).asks.find(a => a.kind === 'blocked');
