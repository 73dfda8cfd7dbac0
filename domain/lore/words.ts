/** Words of the trade for one thing, the first being the one used here. Common practice on both sides of the ocean, no source. */
const SAME: readonly (readonly string[])[] = [
  ['hood', 'bonnet'], ['fender', 'mudguard', 'wing'], ['tire', 'tyre'], ['carburetor', 'carb', 'carburettor'], ['radiator', 'rad'],
  ['generator', 'dynamo'], ['muffler', 'silencer'], ['dash', 'dashboard'], ['gearbox', 'transmission'],
  ['pan', 'sump'], ['engine', 'motor'], ['ground', 'earth'], ['decal', 'transfer'],
  ['vaporizer', 'vaporiser'], ['tap', 'cock', 'shutoff'], ['light', 'lamp', 'headlight', 'headlamp'],
  ['gauge', 'gage'], ['disc', 'disk'], ['bushing', 'bush'], ['hub', 'boss'],
];
const ONE = new Map(SAME.flatMap((words) => words.map((word) => [word, words[0]!] as const)));

/** The same for names of several words, and for words written together. Read after articles and plurals are gone. */
const NAMES: readonly (readonly [said: string, here: string])[] = [
  ['gudgeon pin', 'wrist pin'], ['wristpin', 'wrist pin'], ['pushrod', 'push rod'], ['sparkplug', 'spark plug'], ['tierod', 'tie rod'], ['draglink', 'drag link'],
  ['bellhousing', 'bell housing'], ['track rod', 'tie rod'], ['stub axle', 'spindle'], ['drop arm', 'pitman arm'], ['plug lead', 'plug wire'], ['oil sump', 'oil pan'],
  ['top hose', 'upper radiator hose'], ['bottom hose', 'lower radiator hose'], ['starter motor', 'starter'], ['petrol tank', 'fuel tank'], ['gas tank', 'fuel tank'],
  ['petrol line', 'fuel line'], ['gas line', 'fuel line'], ['petrol pipe', 'fuel line'], ['fuel pipe', 'fuel line'], ['brake pipe', 'brake line'], ['hydraulic pipe', 'hydraulic line'],
  ['hydraulic hose', 'hydraulic line'], ['thermostat cover', 'thermostat housing'], ['clutch plate', 'clutch disc'], ['clutch cover', 'pressure plate'],
  ['throwout bearing', 'release bearing'], ['rocker cover', 'valve cover'], ['wiring loom', 'wiring harness'], ['instrument panel', 'dash'], ['petcock', 'drain cock'],
  ['cutout', 'voltage regulator'], ['conrod', 'connecting rod'], ['con rod', 'connecting rod'], ['alternator belt', 'fan belt'], ['generator belt', 'fan belt'],
  ['nose cone', 'grille'], ['bonnet catch', 'hood catch'], ['earth strap', 'ground strap'], ['earth cable', 'ground cable'], ['trackrod', 'tie rod'],
];

/** The words used here for the words of a name, in order. */
export function canonicalWords(words: readonly string[]): string[] {
  let name = ` ${words.join(' ')} `;
  for (const [said, here] of NAMES) name = name.replace(` ${said} `, ` ${here} `);
  return name.trim().split(' ').filter(Boolean).map((word) => ONE.get(word) ?? word);
}

/** Words that say which one of several; a rule about wheels is about each of them, but left goes with left. */
const SIDES = ['left', 'right', 'front', 'rear', 'back', 'upper', 'lower', 'top', 'bottom', 'inner', 'outer', 'first', 'second', 'third', 'fourth'];
const SIDE = new Set(SIDES);
const OPPOSITE: readonly (readonly string[])[] = [['left', 'right'], ['front', 'rear', 'back'], ['upper', 'lower', 'top', 'bottom'], ['inner', 'outer'], ['first', 'second', 'third', 'fourth']];

export const isSide = (word: string): boolean => SIDE.has(word);

/** False when two names say opposite sides: a left drum has nothing to do with a right shoe. */
export function sidesAgree(a: readonly string[], b: readonly string[]): boolean {
  return OPPOSITE.every((group) => {
    const [one, other] = [a.find((word) => group.includes(word)), b.find((word) => group.includes(word))];
    return one === undefined || other === undefined || one === other || (one === 'rear' && other === 'back') || (one === 'back' && other === 'rear');
  });
}

/** A word before a head word that makes another thing of it: a steering wheel is no wheel. */
const ANOTHER: Record<string, readonly string[]> = {
  wheel: ['steering', 'fly', 'hand', 'idler', 'worm', 'timing', 'gauge'],
  fan: ['heater'], belt: ['seat', 'tool'], seat: ['valve', 'spring'], tire: ['spare'], light: ['timing', 'trouble', 'work'], engine: ['pony', 'starting'],
  hood: ['seat'], piston: ['brake', 'lift', 'ram', 'cylinder'], cylinder: ['wheel', 'master', 'lift', 'slave', 'brake'], governor: ['pump'], dash: ['pot'], gauge: ['feeler', 'tire', 'depth', 'wire'],
  decal: ['old'], block: ['wood', 'cribbing', 'fuse', 'terminal', 'pillow'], frame: ['seat', 'cab', 'roll'], starter: ['rope'],
};

/**
 * Whether a part's words are the kind of part that a rule names: they end with the rule's words (`left front wheel`,
 * `front axle spindle`), and the word before them does not make another thing of it (`steering wheel`).
 */
export function isKindOf(said: readonly string[], rule: readonly string[]): boolean {
  if (rule.length === 0 || said.length < rule.length) return said.length === 0 && rule.length === 0;
  const from = said.length - rule.length;
  if (!rule.every((word, k) => said[from + k] === word)) return false;
  const before = said[from - 1];
  return before === undefined || isSide(before) || !(ANOTHER[rule[0]!] ?? []).includes(before);
}
