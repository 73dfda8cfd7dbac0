import type { SumKind } from './kind.ts';
import { sort } from './pulleys.ts';
import { pulleys, side, swap } from './which-pulley.ts';
import type { Given, Scope } from './scope.ts';

const WANTED = /\b(?:want|wants|need|needs|needed|after|should|aiming for|has to|have to|got to|supposed to|likes?|ought to|meant to|target|get|to get|to give|must|to make|rated)\b/;

function sheaveGiven(scope: Scope, prev?: Given): Given {
  const p = sort(scope, prev);
  const out: Given = {};
  const swapped = prev && swap(scope, p, prev);
  if (swapped) Object.assign(out, swapped);
  else pulleys(scope, p, out, prev);
  if (prev && out.d2 !== undefined && prev.rpm1 !== undefined && prev.rpm2 !== undefined) out.rpm2 = undefined; // a size for the pulley that was asked for: now its speed is
  for (const s of p.speeds) {
    const others = [...p.speeds, ...p.diameters].filter(o => o !== s);
    const clause = scope.before(s, 46).split(/[,.;?]| and /).at(-1) ?? '';
    const which = side(scope, s, others);
    const asksDriver = /\b(?:engine|motor|driver) (?:speed|rpm|revs) ?[?.]? ?$/.test(scope.text) || /\b(?:how fast|what speed|what rpm|what)\b[^.?!]*\b(?:motor|engine|driver|drive shaft)\b[^.?!]{0,24}$/.test(scope.text);
    const driven = (WANTED.test(clause) && which !== 'driver') || (which === 'driven' && asksDriver);
    const sized = prev && prev.rpm1 !== undefined && prev.rpm2 !== undefined && prev.d2 === undefined && which !== 'driver'; // "what size is that, and at 450?"
    const name = ((driven || sized || /\bwhat (?:has|must|should|does) (?:the |my )?(?:engine|motor|tractor|pto|crank|driver)\b/.test(scope.text)) && out.rpm2 === undefined) || out.rpm1 !== undefined ? 'rpm2' : 'rpm1';
    if (prev && prev.rpm2 !== undefined && prev.rpm1 === undefined) out.rpm2 ??= s.value; else out[name] ??= s.value;
    scope.take(s);
  }
  return out;
}

export const SHEAVE: SumKind = {
  of: 'sheave',
  ask: [
    /\bwhat (?:speed |rpm |revs )?(?:do|should|would|must|will|can) (?:i|we) (?:run|drive|turn|set) (?:the [a-z]+|it|her) at\b/,
    /\bwhat(?: size)?(?: pulley| sheave)? (?:do |would |should )?i (?:want|need)(?: to put)? on (?:the |my )?[a-z]+(?: [a-z]+)? (?:to get|for|to make|to give)\b/,
    /\bhows (?:the |my )?[a-z]+(?: [a-z]+)? (?:turning|spinning|running)(?= ?(?:$|[?.,]))/,
    /\bwhat(?:s|ll| (?:does|do|will|would|s|is|ll|did)) (?!(?:i|we) (?:do|go|run)\b)(?:the |my |it |that |this |she |they |a )?(?:(?:[a-z]+|#~*(?!~)) ){0,4}?(?:turn|spin|run|do|rev|go|turning|spinning|running|doing|end up at|come out at)\b(?: (?:at|over))?/,
    /\bwhat(?:s|ll)? (?:(?:speed|rpm|revs|revolutions|rpms)\b|the (?:speed|rpm|revs|blade speed|shaft speed|[a-z]+ (?:speed|rpm|revs))\b)/,
    /\bhow fast (?:(?:does|will|would|is|s|do|should|ll|can|might|did|am i) )?(?:the |my |it |that |this |she |they |ll )?(?:[a-z]+ ){0,4}?(?:turn|spin|run|go|rev|turning|spinning|running|going|be|end up|does|will|it)\b/,
    /(?:^|[.?!;,:] )(?:and )?(?:what )?(?:size|speed|rpm|revs|how fast|what (?:size|speed|rpm|revs)(?: is that| on the [a-z]+| at the [a-z]+| for the [a-z]+)?)(?= ?(?:\?|$))/,
    /\b(?:turns?|spins?|runs?|drives?) (?:the |my )?[a-z]+(?: [a-z]+)? (?:how fast|at what(?: speed)?)\b/,
    /\b(?:turns?|spins?|runs?) what(?= ?(?:$|[?.,]))/,
    /\bwhat does (?:the |my )?[a-z]+(?: [a-z]+)? (?:pulley|wheel|sheave) make\b/,
    /\bwhat (?:speed|rpm|revs)(?:s| is| are| will| does)? (?:it|she|he|they|the [a-z]+|that|ll)(?: be)? [a-z]+ing(?: at)?\b/,
    /\bwhat (?:has|must|should|does|would|will) (?:the |my )?(?:engine|motor|tractor|pto|crank|driver|saw|blade|mill|pump) (?:to |have to |need to |got to )*(?:turn|run|do|be|rev|spin|be doing|turning)\b(?: (?:at|over))?/,
    /\bwhat size(?: (?:do i (?:need|want|put)|should i (?:put|use|get)|goes|for|on|to go))* (?:on |for )?(?:the |my )?[a-z]+(?= ?(?:\?|$))/,
    /\bhow many (?:revs|rpms?|turns|revolutions)\b(?! (?:is|on the (?:screw|nut|adjust)))/,
    /\b(?:what|which)(?: size| diameter|s the size of)?(?: (?:of|a|drive|driven|motor|engine|the))* (?:pulley|sheave)s?(?: (?:size|diameter|do|would|should|will|does|must|for|on|to|goes|is|i|gives|gets))*\b/,
    /\b(?:blade|shaft|saw|fan|mill|pump|arbor|spindle|output|driven|drum|cylinder|blower|engine|motor|cutter|drive) (?:speed|rpm|revs)\b(?= ?(?:$|\?|,|with|if|at|and|please))|(?:^|[.?!;] ?)(?:the )?(?:driven|driver|shaft|saw|fan|blade|drum|pump|mill) speed(?= ?\.)/,
    /\bwhat(?:s| is| does| will| would) (?:that|it|this) (?:give|make|come to|come out|work out)(?: (?:me|the [a-z]+|it|for))*(?: (?:at|to|as|in))?(?: (?:rpm|revs|speed|on the (?:blade|saw|mill|shaft|pump|fan)))?/,
    /\bwhat (?:the|my) [a-z]+(?: [a-z]+)?(?:ll| will| does| is)? (?:turns?|spins?|turning|spinning)(?= ?(?:$|[?.,]| at\b| and\b| if\b))/,
    /\b(?:speed|rpm|revs) of (?:the |my )?[a-z]+(?: [a-z]+)?(?= ?\?)/,
    /\b(?:would|will|is|wont|isnt) (?:that|it|this|she) (?:be )?too (?:fast|slow)\b/,
    /\bwhatll (?:it|the [a-z]+(?: [a-z]+)?|that|she) (?:turn|spin|run|do|rev|go|be turning)\b/,
  ],
  unless: /\bbelt length|length of belt|how long is the belt\b|\b(?:gpm|gallons? (?:a|per) minute|cylinder bore|bore cylinder|hydraulic|ram)\b|\bteeth\b|\btooth\b|\bsprockets?\b(?![^.?!]*\binch)|\b(?:slings?|legs|flats?|solids)\b/,
  given: sheaveGiven,
  result: /\b(?:speed|rpm|revs)\b/,
  needs: ['d1', 'd2', 'rpm1', 'rpm2'],
  telling: [['d1', 'd2', 'rpm1'], ['d1', 'rpm1', 'rpm2']],
  wants: ['d1', 'd2'],
  either: [],
  weight: -1,
};
