import type { Ask } from '../../../domain/model/ask.ts';
import { machineOf, spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';

const LOOSE = String.raw`(?:temporar(?:y|ily)|(?<!\b(?:the|oil|water|air|high|low) )temp\b(?! (?:of|gauge|sender|sensor|in|at))|on temp|lashed (?:up|on)|bodged|cobbled (?:up|together|on)|rigged(?: up)?|provisional(?:ly)?|finger ?tight|hand ?tight|mock(?:ed)?(?: |-)?up|tacked|hung|(?<=\b(?:just|only|still|left|is|are|thats|merely) )hanging(?! (?:up |on |around |about )?(?:on |for )?(?:something|anything|that|parts))|pinched(?: up)?|snugged(?: up)?|only there|merely (?:on|there)|for (?:a|the) look(?:s| of it| see)?|for show|for size|to see how (?:it|they) (?:looks?|fits?)|(?:not|isnt|arent|aint|hasnt been|havent been|never)(?: (?:yet|really|actually|quite|fully|been|to be|exactly|there|on|in|fixed|fitted|fastened|bolted|done up|secured|set|down|home|mounted|tightened|torqued))*(?: (?:for good|for keeps|for real|for certain|for ever|permanent(?:ly)?|properly|right|solid|to stay|staying|final(?:ly)?|done up|tight(?:ened)?|torqued|to torque|home))|nipped(?: up)?|loose(?:ly)?|test fit(?:ted)?|trial fit(?:ted)?|just (?:sitting|hanging|resting|propped|held|clamped|pinned|placed|tried|wired|tied|tacked|hung)|(?:just|only|merely) (?:stuck|set|sat|put|propped|wedged|perched|slung|pinned|clamped|wired|lashed|trial fitted|trial-fitted|half bolted)(?: or (?:just |only |merely )?[a-z]+ed)?(?: (?:on|in|up|there))?|only (?:sitting|hanging|held|tried|nipped|tacked|hung|started|half|on loose|on for)|held(?: (?:on|in|together|down|there))? (?:by|with)|held up (?:by|with) (?:an?|one|two|three|four|string|wire|rope|chain|blocks?|baler|bailing|tape|just|only)\b|(?:still|yet|waiting|got|has|have|needs?|left) to be (?:tightened|torqued|done up|pinned|locked|bolted (?:up|down)|fixed|nipped|snugged|secured)|wants? tightening(?: properly)?|tried(?: on)?|for now|for the time being|to come off again|coming off again|come off again|got to come (?:back )?off|still (?:to be )?(?:torqued|tightened)|isnt (?:on )?for good|arent (?:on )?for good|isnt final|not torqued|isnt torqued|untorqued|roughed in|dry fit(?:ted)?|stop ?gap|makeshift|borrowed bolts?|wrong bolts?|slave bolts?|pro ?tem|only on for)`;
const ON = /\b(?:on|of|in|about|for|around|with|off|(?:fitted|bolted|clamped|hung|tacked|tied|wired|pinned|held) to) (?=(?:the|my|that|this|our|old|[a-z]+)\b)/g;

/** What is only tried or temporary, on the whole or on one machine. */
export const PROVISIONAL: readonly AskRule[] = [
  { name: 'what is temporary', open: new RegExp(String.raw`\b(?:what|whats|whatve|(?<!, )which|any of (?:the|my) (?:parts|bits|pieces|things)|anything|anythings|is there anything|have i (?:got )?anything|list|show me|tell me|give me|remind me(?! that| to)|run me through|everything|whatever)\b(?! (?:if|about)\b)(?! (?:is |s |are |am i |still |apart from [a-z ]+ )*(?:holding|standing|keeping|stopping|stops|blocking|waiting|between))(?! (?:did|size|torque|time|day|speed|was|were|do i (?:do|need|pull|set|want)|gap|pressure|will|price))(?:(?!(?:\b(?:and|but)|,) (?:what|where|how|when|who|which|is|can|show|tell|give|list)[a-z]*\b)[^.?!;])*?\b${LOOSE}(?: ?(?:,|or|and) (?:only |just |still |merely )?${LOOSE})*`), weight: 4, make: s => asked(s) },
  { name: 'is X still temporary', open: /\b(?:is|are) /, things: 'one', tail: new RegExp(String.raw`^ (?:(?:on|tight|torqued(?: down| up)?|bolted(?: down| up)?|done up|on for good|fixed|in)(?: for good| properly)?,? or )?(?:still |only |just |all |is it )*${LOOSE}`), tailNeeded: true, weak: true, weight: 1, make: s => [{ kind: 'provisional', part: s.names[0] }] },
  { name: 'any components only provisional', open: new RegExp(String.raw`\b(?:whether|if|are|is|do|does|have)(?: (?:there|i|we|got|have))* any(?: of the)? (?:components?|parts?|items?|bits?|pieces?|fittings?|fasteners?|bolts?|nuts?|things?)\b[^.?!;]*?\b${LOOSE}`), weight: 5, make: s => [{ kind: 'provisional', ...partOn(s) }] },
  { name: 'anything hung and not bolted', open: /\b(?:is there |have i |whats |what is )?(?:anything|something|what(?:s| is)?)(?: (?:that|which|i|im|ive|we|only|just|after|is|s|on|there|still))* (?:hanging|hung|put(?:ting)?|stuck|sticking|set|sitting|left|leaving|bunged|lifted|thrown) [^.?!;]*?\b(?:not|isnt|never|hasnt been|havent|without)(?: (?:been|got|yet|it))* (?:bolt(?:ed|ing)|tight(?:ened|ening)?|torqu(?:ed|ing)|pinned|fastened|secured|done up|nipped|locked)\b/, weak: true, weight: 5, make: s => /^(?:any|some)/.test(s.m[0]) && s.desk.text[s.stop - 1] !== '?' && s.desk.text.slice(s.end, s.stop).trim().length > 3 ? undefined : [{ kind: 'provisional', ...partOn(s) }] },
  { name: 'temporary list', open: new RegExp(String.raw`(?:^|[.?!;,] |\band )(?:the )?(?:temporar(?:y|ies)|provisional|loose|finger tight|mocked up|mock ups?) (?:stuff|things|list|parts|fits|bits|items|ones)(?= ?(?:$|[?,.]|on\b|please))`), weight: 2, make: s => asked(s) },
];

function asked(s: Seen): Ask[] | undefined {
  const text = s.desk.text.slice(s.start, s.stop);
  if (!/^(?:what|which|whatever|any|is|have|list|show|tell|give|remind|run|every|[.?!;,]|the|and|temp|prov|loose|finger|mock)/.test(text)) return undefined;
  if (/^(?:everything|list|give|tell)/.test(text) && !/\b(?:what|list|show|tell|give|everything thats)\b/.test(text)) return undefined;
  const limit = nextQuestion(text) ?? text.length;
  for (const m of text.slice(0, limit).matchAll(ON)) {
    if (/^(?:her|him)\b/.test(text.slice(m.index + m[0].length))) { // the whole machine
      const { machines } = s.desk.sheet.ctx, machine = s.desk.spoken.filter(x => x.end <= s.start).at(-1)?.name ?? (machines?.length === 1 ? machines[0] : machineOf(s.desk, s.start));
      return [{ kind: 'provisional', ...(machine ? { part: machine } : {}) }];
    }
    if (/^(?:its|their) (?:bits|parts|pieces|bolts|fittings)\b/.test(text.slice(m.index + m[0].length))) { const whose = spokenOf(s.desk, s.start); if (whose) return [{ kind: 'provisional', part: whose }]; }
    const t = thingAt(s.desk, s.start + m.index + m[0].length, s.start + limit);
    if (/^(?:temp|provisional|trial|loose|whatever)/.test(t?.name ?? '')) continue;
    if (t && !/\bbolts?$/.test(t.name) && !/^(?:good|moment|now|loose|bolts?|bits?|parts?|things?|ones|minute|time being|keeps|sight|bench|place|bolt|nut|trial|test|clamps?|wire|string|paint|here|look|looks|show|size)$/.test(t.name)) return [{ kind: 'provisional', part: t.name }];
  }
  const there = /\b(?:on|in) there\b/.exec(text.slice(0, limit)) && spokenOf(s.desk, s.start);
  return [{ kind: 'provisional', ...(there ? { part: there } : {}) }];
}
/** The machine or part it is on, where one is named. */
function partOn(s: Seen): { part?: string } {
  for (const m of s.desk.text.slice(s.start, s.stop).matchAll(/\b(?:on|in) (?=(?:the|my|that|this|our)\b)/g)) {
    const t = thingAt(s.desk, s.start + m.index + m[0].length, s.stop);
    if (t) return { part: t.name };
  }
  return {};
}
const nextQuestion = (text: string): number | undefined => {
  const m = /(?:,? and|,) (?:what|whats|where|wheres|how|when|whens|who|is|can|do|any)\b/.exec(text.slice(6));
  return m ? m.index + 6 : undefined;
};
