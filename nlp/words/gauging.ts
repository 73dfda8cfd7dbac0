/** Verbs that tell a figure of a part: what was read off it, what it does, what it is down to. */
export const MEASURES = /^(measure|read|mike|be|show|gauge|check|clock|get|make|find|have|give|see|come|hold|sit|run|draw|pull|put|weigh|register|test|lift|open|pop|crack|blow|cut|charge|drop|lose|move|sag|stand|close|take|do|rock|wear|up|say|work|settle|tick|idle|rev|top|kick|knock|push|pump|build|climb|rise|fall|hover|wander|vary|average|crank|stretch|shrink|grow|bow|lean|deflect|carry|leak|bleed|turn|spin|end|finish|start|leave|need|slop|peak|max|bottom|tip|calliper|caliper|go|reckon|figure|count|back|wind|screw)$/;

/** What a figure of that unit is, where nothing nearer says so. */
export const BY_UNIT: Record<string, string> = {
  psi: 'pressure', bar: 'pressure', kPa: 'pressure', inHg: 'vacuum', 'lb-ft': 'torque', 'lb-in': 'torque', 'N·m': 'torque', V: 'voltage', A: 'current', mA: 'current', 'Ω': 'resistance', 'kΩ': 'resistance', 'MΩ': 'resistance', '°F': 'temperature', '°C': 'temperature', rpm: 'speed', mil: 'film', lb: 'weight', kg: 'weight', g: 'weight',
  gal: 'capacity', qt: 'capacity', L: 'capacity', h: 'running time', mi: 'distance', '°': 'angle', gpm: 'flow', 'L/min': 'flow', hp: 'power', 'µm': 'size',
};

const LENGTH = /^(in|mm|ft|cm|m|mil)$/, PRESSURE = /^(psi|bar|kPa|)$/;
/** What a verb says that a figure of such a unit is; the empty unit is a bare number's. */
export const BY_VERB: readonly (readonly [said: RegExp, unit: RegExp, what: string])[] = [
  [/\b(lifts?|lifted|pops?|popped|cracks?|cracked|blows?|blew)( off| open)? at\b/, PRESSURE, 'lifting pressure'], [/\b(opens?|opened|opening|starts? to open|cracks? open) (up )?at\b/, /^(psi|bar)$/, 'opening pressure'],
  [/\b(opens?|opened|opening|starts? to open|started to open|cracks? open) (up )?at\b/, /^(°.?|)$/, 'opening temperature'], [/\bcuts? in\b/, /./, 'cut-in'], [/\bcuts? out\b/, /./, 'cut-out'],
  [/\bruns? out\b|\brunning out\b|\bout of true\b/, LENGTH, 'runout'], [/\bout of round\b/, LENGTH, 'out of round'], [/\bproud\b|\bstands? (up )?above\b/, LENGTH, 'protrusion'], [/\bwarp(s|ed)?\b/, LENGTH, 'warp'], [/\bdip(s|ped)?\b/, LENGTH, 'dip'], [/\bbell ?mouth(ed)?\b/, LENGTH, 'bellmouth'], [/\b(low|high) (to|of|on|at)\b/, LENGTH, 'height'], [/\bbetween\b/, LENGTH, 'clearance'], [/\b(hollow|dished|concave)\b/, LENGTH, 'hollow'], [/\b(sunk|recessed|below flush|under flush)\b/, LENGTH, 'depth'], [/\bsags?\b/, LENGTH, 'sag'], [/\bclosed (up|in)\b/, LENGTH, 'closed up'],
  [/\bundersize\b|\bunder size\b|\b(under|down)\b[ .]*$/, LENGTH, 'undersize'], [/\boversize\b|\bover size\b|\bover\b[ .]*$/, LENGTH, 'oversize'], [/\bbow(s|ed)?\b/, LENGTH, 'bow'], [/\bclear(s|ed|ing)?( it)? by\b/, LENGTH, 'clearance'], [/\bdraw(s|ing|n)?\b|\bdrew\b/, /^m?A$/, 'current'], [/\bstretch(ed|es)?\b/, LENGTH, 'stretch'], [/\bworn\b|\bwear\b/, LENGTH, 'wear'],
  [/\bacross( the)? flats\b/, /^(in|mm|)$/, 'across the flats'], [/\b(tick|turn)(s|ed|ing)? over at\b|\bidl(es|ed|ing)( down)?\b|\bidle at\b/, /^(rpm|)$/, 'idle speed'], [/\b(top|max|rev|run|govern)(s|ped|ning|ing|ned|med)?( \w+)? out at\b|\bflat out\b|\bgoverned at\b/, /^rpm$/, 'top speed'],
  [/\b(charg(es?|ed|ing)|puts?|putting|kicks?|kicking|knocks?|knocking)( out)?( at)?\b/, /^V$/, 'voltage'], [/\bcharg(es?|ed|ing)( out)? at\b|\b(push|put|pump)(es|s|ing) \S+ into\b/, /^$/, 'charge'],
  [/\bon the gauge\b|\b(blew|blow|blown|pump|pumped|air|aired|inflate|inflated)\b.*\bup to\b|\b(pump|blow|pull|build)(s|ed|ing)? up to\b|\b(pull|pump|blew|blow|made|makes?)(s|ed|ing)?\b.*\bon (number|no|cylinder|pot|one|two|three|four|the (first|second|third|fourth|front|rear|back|left|right))\b/, PRESSURE, 'pressure'],
  [/\b(good|safe|protect\w*|tests?|tested|ok|okay|reads?) (down )?to (minus|-)/, /^(°.?|)$/, 'freezing point'],
];

/** What is measured on a part by its nature, when only a length is given. */
export const BY_PART: readonly (readonly [RegExp, string])[] = [
  [/\b(points|plug|plugs|igniter|breaker|electrodes?)$/, 'gap'], [/\b(tappets?|valves?|rockers?)$/, 'clearance'], [/\b(rings?)$/, 'gap'],
  [/\b(bush|bushes|bushing|bushings|sleeve|guide|guides|cylinder|cylinders|liner|liners|barrel|bearing|bearings)$/, 'bore'],
  [/\b(bores?)$|(journal|journals|pin|pins|crankpin|crankpins|kingpin|kingpins|shaft|arbor|spindle|stem|stems|drum|drums|pivot|piston|pistons|rod|axle|bar|pulley|sheave|rotor|disc|main|mains|throw|throws|big ends?|trunnions?|shafts|spindles|hubs?|wheels?)$/, 'diameter'],
  [/\b(plate|gasket|shim|lining|linings|pack|pad|leaf|disc|head|block|wall|tread|brush|shoe|liner)(s|es)?$/, 'thickness'], [/\b(spring|rope|cable|pipe|chain|belt|hose|pushrod)s?$/, 'length'], [/\b(battery|dynamo|alternator|generator|regulator|coil|cell)$/, 'voltage'],
  [/\b(crown wheel|gear|pinion|bevel)s?\b.* to .*\b(pinion|gear|wheel|crown wheel|bevel)s?$/, 'backlash'], [/ to /, 'clearance'],
];
