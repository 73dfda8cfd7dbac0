/** Words of the trade that are spelt in two ways (and "no. 2", "number two"), each brought to one, so that a name typed in one country finds the shop's in the other's. */
const TWICE: readonly (readonly [either: RegExp, one: string])[] = [
  [/\bcarburett?[eo]r\b/g, 'carburettor'], [/\bcolter\b/g, 'coulter'], [/\bmo(?:u)?ld ?board\b/g, 'mouldboard'], [/\bmold\b/g, 'mould'], [/\bplow/g, 'plough'], [/\btire\b/g, 'tyre'], [/\bthrasher\b/g, 'thresher'],
  [/\bdisk\b/g, 'disc'], [/\bcenter\b/g, 'centre'], [/\barbour\b/g, 'arbor'], [/\bgage\b/g, 'gauge'], [/\bvaporizer\b/g, 'vaporiser'], [/\bgrey\b/g, 'gray'], [/\bvise\b/g, 'vice'], [/\baluminum\b/g, 'aluminium'],
  [/\bbabbit\b/g, 'babbitt'], [/\bgrill\b/g, 'grille'], [/\bcalliper\b/g, 'caliper'], [/\bfiber\b/g, 'fibre'], [/\bdraught\b/g, 'draft'], [/\bequalizer\b/g, 'equaliser'], [/\bpulverizer\b/g, 'pulveriser'], [/\bstabilizer\b/g, 'stabiliser'],
  [/\bno\.? (?=\d)/g, 'number '],
  ...'one two three four five six seven eight nine ten eleven twelve'.split(' ').map((word, n): readonly [RegExp, string] => [new RegExp(`\\bnumber ${word}\\b`, 'g'), `number ${n + 1}`]),
];

const ANY = new RegExp(TWICE.map(([either]) => either.source).join('|'));

/** A name's key with every such word in its one spelling. */
export const oneSpelling = (key: string): string => (ANY.test(key) ? TWICE.reduce((k, [either, one]) => k.replace(either, one), key) : key);
