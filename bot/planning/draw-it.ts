import type { Ask } from '../../domain/model/ask.ts';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn/parts.ts';
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

/** "Draw it": what was last answered, as a picture, handed out. Undefined: not these words. */
export function drawAsked(turn: Turn): TurnOut | undefined {
  if (!WORDS.test(turn.incoming.text.trim())) return undefined;
  const { note, incoming: { at, chat }, deps: { log } } = turn;
  const held = readSetting(log.store, nameFor(chat));
  const drawing = held === undefined ? undefined : Drawing.safeParse(JSON.parse(held)).data;
  if (!drawing) return { reply: compose({ note: note.id, at, lines: ['Ask what holds something up, when it will be done, or what it cost or took; then I can draw it.'] }) };
  return { reply: { ...compose({ note: note.id, at, lines: ['Drawing it…'] }), later: [{ kind: 'draw', drawing }] } };
}
