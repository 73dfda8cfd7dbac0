import { drillNamed } from './bench.ts';
import type { SumKind } from './kind.ts';
import { type Figure, type Given, Scope } from './scope.ts';
import { pitched } from './pitched.ts';
import { sizeIn } from './bolt-said.ts';
import { table } from '../../../words/table.ts';

function size(scope: Scope): Given {
  const s = sizeIn(scope);
  scope.take(s?.at);
  return s ? { size: s.size } : {};
}

/** The drill whose thread is asked about: "with a 29/64 drill", "out of a 1/16 hole", "a number seven". */
function drillUsed(scope: Scope): string | undefined {
  const named = drillNamed(scope);
  if (named) { scope.take(named); return named.drill; }
  return /(?:^|\s)(\d+\/\d+|[\d.]+ ?mm)(?: inch| in)?(?= (?:drill|bit|hole)\b)/.exec(scope.text)?.[1];
}

/** The thread, where the drill's own fraction could be held for one. */
function otherThan(scope: Scope, drill: string): Given {
  const threads = scope.values('thread').filter(t => t.value.size !== drill);
  scope.take(threads[0]);
  return threads[0] ? { size: threads[0].value.size } : size(scope);
}

/** "half inch fine at seventy five": a percent of thread is said without its name. */
const atPercent = (scope: Scope): Figure | undefined => scope.numbers().find(n => n.value >= 50 && n.value <= 90 && /\bat(?: about)? $/.test(scope.before(n)) && /^ ?(?:$|[?.,]|and\b|or\b|what\b|how\b|please\b|then\b)/.test(scope.after(n)));

/** Several threads in one question, each with the percent beside it or the one for all. */
function each(scope: Scope): Given[] {
  const threads = scope.here(scope.values('thread')), percents = scope.values('percent');
  if (threads.length < 2) return [];
  return threads.map((t, i) => {
    const own = new Scope(scope.desk, t.end, Math.max(t.end, threads[i + 1]?.start ?? scope.end));
    const p = percents.find(x => x.start >= own.start && x.end <= own.end), n = p ? undefined : atPercent(own);
    const all = percents.length === 1 ? percents[0] : undefined;
    scope.take(t, p ?? n ?? all);
    const percent = p?.value.value ?? n?.value ?? all?.value.value;
    return { size: pitched(scope, t), ...(percent === undefined ? {} : { percent }) };
  });
}

export const TAP_DRILL: SumKind = {
  of: 'tapDrill',
  each,
  ask: [
    /\btap(?:ping)? (?:drill|drills|hole|size)(?: (?:size|bit|for|do|is|should))*\b/,
    /\b(?:what|which|whats)(?: (?:the|size|sized|number|letter|diameter|is|of|a|bit|right|correct|kind))*(?: (?:drill|drill bit|bit|hole|twist drill))s?(?: (?:size|bit|do|should|would|will|is|goes|shall|i|use|need|for|to|want|before|drill|first|right|with|it|take|on|a|an|the|that|that be|be|reach|put))*\b/,
    /(?:^|[.?!;,:] |\band )(?:and )?(?:an?|the) (?:tapping )?drill for (?=[^.?!]*\?)/,
    /\b(?:drill|hole) (?:size|diameter)(?: (?:for|to|on|is|do|should|would))?/,
    /\b(?:what|how big)(?: (?:size|a hole|hole|do|should|would|will|must|shall|big|i|to|need))+ (?:drill|bore)\b(?! press)(?: (?:it|that|out|for|to|this|them|first))*/,
    /\bhow big (?:a )?(?:hole|drill)\b/,
    /\b(?:what|how much|which)(?: (?:is|full|of a))* (?:percent(?:age)?|%)? ?(?:of )?(?:full )?threads?\b(?= ?(?:$|[?.,]| (?:does|do|is|will|would|have|am|engagement|that|left)))/,
  ],
  unless: /\b(?:clearance|clear(?:s)? (?:a|the)|npt|pipe (?:thread|tap)|bolt through|slip through|pass through|free hole|bspt?|taper pipe)\b/,
  given(scope, prev) {
    const p = scope.values('percent').at(-1);
    scope.take(p);
    const bare = prev?.percent !== undefined && !p ? scope.numbers().find(n => n.value >= 30 && n.value <= 100) : undefined;
    if (bare) { scope.take(bare); return { ...size(scope), percent: bare.value }; }
    const n = p ? undefined : atPercent(scope);
    scope.take(n);
    const drill = /\bwhat percent|\bhow much thread|\bpercent(?:age)? (?:of )?(?:full )?thread\b|\bthread (?:does|do|will|would|is)\b/.test(scope.text) ? drillUsed(scope) : undefined;
    if (drill) return { ...otherThan(scope, drill), drill };
    return { ...size(scope), ...(p ? { percent: p.value.value } : n ? { percent: n.value } : {}) };
  },
  needs: ['size', 'percent'],
  telling: [['size', 'percent']],
  wants: ['size'],
};

export const CLEARANCE: SumKind = {
  of: 'clearanceHole',
  ask: [
    /\b(?:close|normal|loose|free)(?: |-)fit (?:hole|drill)\b/,
    /\b(?:clearance|through|clear|free) (?:hole|drill|fit hole|size|drill size)\b/,
    /\b(?:what|which|how big|whats)[^.?!]{0,40}?\b(?:hole|drill|drill bit)\b[^.?!]{0,40}?\b(?:clear(?:s|ance)?|pass(?:es)?|slips?|go(?:es)? (?:through|thru)|slide|clearance)\b/,
  ],
  given(scope) {
    const fit = /\b(close|loose|normal|free|tight|medium|fine|coarse|easy)(?: |-)?(?:fit|clearance|hole|one|running)\b/.exec(scope.text)?.[1];
    const name = fit && ({ free: 'loose', easy: 'loose', tight: 'close', medium: 'normal', fine: 'close', coarse: 'loose' } as Record<string, string>)[fit];
    return { ...size(scope), ...(fit ? { fit: name ?? fit } : {}) };
  },
  wants: ['size'],
  weight: 2,
};

/** A pipe's size is its name: "1/4", "1-1/4", "1". */
const PIPE = String.raw`(\d+-\d+\/\d+|\d+ \d+\/\d+|\d+\/\d+|\d(?!\d|\/)|(?:one and a |an inch and a |inch and a )?(?:half|quarter|eighth)|three eighths?|three quarters?|inch|one)`;
const PIPE_WORDS: Record<string, string> = table({ half: '1/2', quarter: '1/4', eighth: '1/8', 'three eighths': '3/8', 'three eighth': '3/8', 'three quarter': '3/4', 'three quarters': '3/4', inch: '1', one: '1', 'inch and a half': '1-1/2', 'inch and a quarter': '1-1/4', 'one and a half': '1-1/2', 'one and a quarter': '1-1/4', 'an inch and a quarter': '1-1/4', 'an inch and a half': '1-1/2' });
export const PIPE_THREAD: SumKind = {
  of: 'pipeThread',
  ask: [
    /\b(?:what|which|how big|whats|drill|hole|tap|how many threads)[^.?!]{0,50}?\b(?:npt|n p t|pipe (?:thread|tap|plug|fitting)|taper(?:ed)? pipe)\b/,
    /\b(?:how many threads|what (?:thread|pitch))[^.?!]{0,30}\bpipe\b/,
    /\bnpt (?:drill|tap|hole)(?: (?:drill|size))?/,
    /\b(?:npt|pipe (?:thread|tap|plug))[^.?!]{0,40}?\b(?:what|which|how big|whats|drill|hole|how many)\b/,
  ],
  given(scope) {
    const m = new RegExp(String.raw`${PIPE}(?: |-)?(?:inch |in |")?(?: ?- ?\d+ )?(?:npt|n p t|pipe|taper)`).exec(scope.text) ?? new RegExp(String.raw`(?:npt|pipe (?:thread|tap))(?: (?:in|of|size|is))* ${PIPE}`).exec(scope.text);
    if (!m) return {};
    scope.take({ start: scope.start + m.index, end: scope.start + m.index + m[0].length });
    return { size: PIPE_WORDS[m[1]!] ?? m[1]!.replace(' ', '-') };
  },
  weight: 3,
};
