import type { SumKind } from './kind.ts';
import { type Given, put, type Scope } from './scope.ts';

/** Coats, and what spraying loses. */
function paintBeside(scope: Scope, out: Given): void {
  const coats = scope.seen(/#~*(?!~) (?:[a-z]+ )?coats?\b/);
  if (coats && Number.isInteger(coats.nums[0]) && coats.nums[0]! < 10) { out.coats = coats.nums[0]; scope.take(coats); }
  const loss = scope.values('percent').find(p => /^ ?(?:overspray|over spray|loss|lost|waste|is lost|wasted)/.test(scope.after(p)) || /\b(?:lose|losing|loss|waste|overspray)(?: (?:of|is|about|say))* $/.test(scope.before(p)));
  if (loss) {
    out.loss = loss.value.value;
    const solids = scope.values('percent').find(p => p.start !== loss.start);
    if (solids) out.solids = solids.value.value; else delete out.solids;
    scope.take(loss);
  }
}

export const COVERAGE: SumKind = {
  of: 'coverage',
  ask: [
    /\bhow (?:much|many (?:quarts|gallons|litres|liters|pints|tins|cans|qts|gals))(?: (?:of (?:the|that|this|it)|of))?(?: (?:the|green|red|grey|gray|top|enamel|epoxy|more|total|do i need of|that|black|blue|white|yellow|orange|two part|two pack|urethane|etch|high build))* ?(?:paint|primer|enamel|topcoat|top coat|undercoat|varnish|epoxy|coating|finish|lacquer|sealer|urethane|clear ?coat|filler primer)\b/,
    /\bhow many (?:sq|square) (?:feet|ft|met(?:re|er)s|m)\b/,
    /\bcoverage\b/,
    /\bwhat(?:s|ll| will| does| would) (?:it|that) take to (?:shoot|spray|paint|cover|coat|brush)(?: (?:it|them|that))?\b/,
    /\bhow much (?:of it )?have i (?:got )?to (?:buy|get|mix|order)\b/,
    /\bpaint (?:needed|required) for\b|(?:^|[.?!;,:] )paint for\b/,
    /\bhow (?:far|much area|many square (?:feet|metres|meters)|big an area)(?: (?:will|does|would|do|can|of|it|a|the|i))* ?(?:(?:[a-z]+|#~*(?!~)) ){0,5}?(?:go|cover|coat|stretch|get|do)\b/,
    /\bhow much (?:(?!(?:is|was|of|are|time|money|do|oil)\b)[a-z]+ ){0,2}?(?:(?:do|will|would|should) )?(?:i|it|that) (?:need|want|take|mix|get|buy|order|use|require)\b(?! to (?:pay|spend))/,
    /\b(?:will|would|does|is) (?:a|one|two|#|the|that) ?(?:[a-z]+ ){0,3}?(?:gallon|quart|litre|liter|tin|can)s?(?: (?:be enough|cover|do|enough))/,
    /\bhow (?:much|many (?:quarts|gallons|litres|liters|pints)) (?:does|will|would|is|do) (?:that|it|this|i)(?: (?:take|need|want|come to|be|work out(?: at| to)?))*\b/,
  ],
  unless: /\b(?:antifreeze|coolant|glycol|radiator|squeeze|shrink|torque|spent|sunk|money|cost|oil|petrol|fuel|heat|interference|belt|hours?|percent (?:antifreeze|mix)|amps|volts|end play)\b/,
  given(scope, prev) {
    const out: Given = {};
    const areas = scope.measures('sq ft', 'm²', 'sq in');
    const area = areas.length > 1 && /\bplus|and\b/.test(scope.text) ? { ...areas[0]!, value: areas.reduce((t, a) => t + a.value, 0) } : areas[0];
    put(out, 'area', area);
    const p = scope.values('percent').find(x => /^ ?(?:solids?|by volume|vol|volume)/.test(scope.after(x)) || /\b(?:solids?|solids by volume|volume solids)(?: (?:is|are|at|of|by volume|content))* $/.test(scope.before(x, 40))) ?? scope.values('percent')[0];
    if (p) out.solids = p.value.value;
    const film = scope.measures('mil', 'µm').at(-1) ?? scope.measures('in').find(f => f.value <= 0.02) ?? scope.measures('mm').find(f => f.value < 1);
    put(out, 'thickness', film);
    const tin = /\bhow (?:far|many (?:sq|square)|much area|big)\b|\bcover(?:age|s)?\b/.test(scope.text) ? scope.measures('gal', 'qt', 'L', 'pt', 'mL').find(f => !/\b(?:per|to the|to a|the) $/.test(scope.before(f))) : undefined;
    if (tin && out.area === undefined) { put(out, 'volume', tin); scope.take(tin); }
    else if (out.area === undefined && /\b(?:an?|one) (quart|gallon|lit(?:re|er)|pint)\b/.test(scope.text) && !/\bto the\b|per\b/.test(scope.text)) { out.volume = 1; out.volumeUnit = ({ q: 'qt', g: 'gal', l: 'L', p: 'pt' } as Record<string, string>)[/\b(?:an?|one) ([qglp])/.exec(scope.text)![1]!]; }
    if (!film && !area && prev) { const n = scope.numbers()[0]; if (n) { out[n.value > 20 ? 'area' : 'thickness'] = n.value; scope.take(n); } } // no film is twenty mils, no job as small in square feet
    scope.take(...areas, p, film);
    paintBeside(scope, out);
    return out;
  },
  extra: ['coats'],
  needs: ['area', 'solids', 'thickness'],
  telling: [['area', 'solids', 'thickness']],
  wants: ['area', 'solids', 'thickness'],
};
