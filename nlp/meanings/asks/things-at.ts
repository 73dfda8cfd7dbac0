import { type Desk, sentenceAt } from './desk.ts';
import { thingAt } from './thing-at.ts';

/** Things named in a row ("the springs and the lubricator"), and where they end. */
export interface Things { names: string[]; end: number }

/** Things in a row from this character: "the springs and the little lubricator", up to what is no thing; undefined where none stands there. */
export function thingsAt(desk: Desk, at: number, limit = sentenceAt(desk, at).end): Things | undefined {
  const first = thingAt(desk, at, limit);
  if (!first) return undefined;
  const names = [first.name];
  let end = first.end;
  for (;;) {
    const from = end + asideAt(desk, end, limit), more = /^(?:,? (?:and )+(?:also )?|,? an (?=(?:the|my|them|those)\b)|, ?(?:and )?| plus |,? or )(?=(?:the|my|those|that|both|a|an|[a-z]+)\b)/.exec(desk.text.slice(from, limit)) ?? RUN_ON.exec(desk.text.slice(from, limit));
    if (!more) break;
    end = from;
    if (OPENS.test(desk.text.slice(end + more[0].length, limit))) break;
    const next = thingAt(desk, end + more[0].length, limit);
    if (next && /^ and all\b/.test(desk.text.slice(next.end, limit))) break;
    if (!next || /(?:^| )ones?$/.test(next.name) || !more[0].includes('and') && !more[0].trim() && !/^ ?(?:$|[?.,]|and\b)/.test(desk.text.slice(next.end, limit))) break;
    if (/^(?: ?(?:is|are|was|were|has|have|does|did|went|goes|came|comes|wants|needs)\b|s\b)/.test(desk.text.slice(next.end, limit))) break;
    names.push(next.name);
    end = next.end;
  }
  return { names, end };
}

/** "the cab mounts the door shims and the mirror arm": things in a row with nothing between. */
const RUN_ON = /^ (?=the (?!(?:other|last|first|next|whole|same) )[a-z]+)/;
/** "the feet for the screen and the box of fingers": what the thing is for stands between it and the next. */
function asideAt(desk: Desk, at: number, limit: number): number {
  const m = /^ (?:for|off|out of|from) (?=(?:the|my|that)\b)/.exec(desk.text.slice(at, limit)), t = m && thingAt(desk, at + m[0].length, limit);
  return t && /^,? (?:and )+(?=(?:the|my|those)\b)/.test(desk.text.slice(t.end, limit)) ? t.end - at : 0;
}

/** A word that opens another question or request is not the next thing of a list. */
const OPENS = /^(?:all (?:charges|in|told|included)|same|what|where|how|when|who|why|which|is|are|can|could|show|tell|give|pull|any|do|did|have|list|find|will|remind)[a-z]*\b/;
