import { describe, expect, it } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-03-19T10:00:00-04:00';
const part = (text: string, parts: string[] = [], prior: string[] = []): string | undefined => {
  const e = readNote(text, { at: AT, parts, machines: ['heron', 'baler'], prior }).entries[0] as { part?: string; item?: string } | undefined;
  return e?.part ?? e?.item;
};

// The name of a part as a note gives it: owner in front, machine dropped, sides kept (the contract of names in the product's own documents).
describe('the name of a part', () => {
  it.each([
    ['the left bearing of the beater shaft is shot', 'left beater shaft bearing'],
    ['bearing on the pump side is dry', 'pump side bearing'],
    ['took the cap off the radiator', 'radiator cap'],
    ['took the wheel off the binder', 'wheel'],
    ['the nut on the end of the kingpin is seized', 'kingpin nut'],
    ['the o-ring on the filter bowl is perished', 'filter bowl o-ring'],
    ['greased the bearings on both wheels', 'wheel bearings'],
    ['the chain from the gearbox to the beater is stiff', 'chain'],
    ['the gasket between the manifold and the head is blown', 'manifold gasket'],
    ['drained the oil from the final drive', 'final drive'],
    ['drained the water out of the block', 'block'],
    ['filed the burr off the shaft', 'shaft'],
    ['the bonnet for the wee tractor is at the painters', 'bonnet'],
    ['four of the eight head bolts are stretched', 'head bolts'],
    ['the flywheel keyway is wallowed out', 'flywheel keyway'],
    ['boiled the carburettor in lemon juice', 'carburettor'],
    ['number two cylinder is scored', 'number two cylinder'],
    ['the old magneto is junk', 'magneto'],
    ['threw the bushing in the scrap bucket', 'bushing'],
  ])('%s', (text, name) => { expect(part(text)).toBe(name); });

  it.each([
    ['rad cap is shot', ['radiator cap', 'radiator'], 'radiator cap'],
    ['tie rod end on the left is loose', ['left tie rod end', 'right tie rod end'], 'left tie rod end'],
    ['the rings are stuck', ['piston rings', 'piston'], 'piston rings'],
    ['the colters are worn thin', ['coulters'], 'coulters'],
    ['the mold board is cracked', ['mouldboard'], 'mouldboard'],
    ['the carburetor is off', ['carburettor'], 'carburettor'],
    ['thrasher drum is bent', ['thresher drum'], 'thresher drum'],
    ['left shocker is weeping', ['left shock absorber'], 'left shock absorber'],
  ])('%s is the known one', (text, parts, name) => { expect(part(text, parts)).toBe(name); });
});
