import { table } from './table.ts';

/** What is put on a part in coats, by the last word of its name, and the work that putting it on is. */
export const COATS: Readonly<Record<string, string>> = table({
  primer: 'prime', paint: 'paint', gloss: 'paint', lead: 'prime', undercoat: 'undercoat', topcoat: 'paint', enamel: 'paint', varnish: 'varnish', oil: 'oil', grease: 'grease', wax: 'wax', lacquer: 'lacquer', sealer: 'seal', oxide: 'prime',
  shellac: 'shellac', stain: 'stain', zinc: 'prime', creosote: 'creosote', underseal: 'underseal', emulsion: 'paint',
});
