import { describe, expect, it } from 'vitest';
import { openSheet } from '../../../nlp/sheet.ts';

const AT = '2026-03-19T10:00:00-04:00';
const said = (text: string, parts: string[] = [], machines: string[] = []): string => openSheet(text, { at: AT, parts, machines }).tokens.map(t => t.low).join(' ');

// What the recogniser makes of shop talk: mishearings recorded from it on spoken notes, and a fast thumb's shorthand (common practice, no source).
describe('mending', () => {
  it.each([
    ['flywheel on the treble lathe', [], ['treadle lathe'], 'flywheel on the treadle lathe'],
    ['the magnet oh is dead', ['magneto'], [], 'the magneto is dead'],
    ['hug bearing is rough', ['hub bearing'], [], 'hub bearing is rough'],
    ['king bold is ready', ['king bolt'], [], 'king bolt is ready'],
    ['rake wheel pushings', ['left rake wheel bushing'], [], 'rake wheel bushings'],
    ['where plates are gone', ['wear plates'], [], 'wear plates are gone'],
    ['the break lines leak', [], [], 'the brake lines leak'],
    ['a coat of prime her', [], [], 'a coat of primer'],
    ['brgs packed w/ grease b4 lunch', [], [], 'bearings packed with grease before lunch'],
    ['left whel bearing shot', ['left wheel bearing'], [], 'left wheel bearing shot'],
    ['stacked agianst the wall', [], [], 'stacked against the wall'],
    ['cleand n straightnd the brkt, 20 frt', [], [], 'cleaned and straightened the bracket , 20 freight'],
    ['did up the share bolts', ['share bolts'], [], 'did up the share bolts'],
    ['main shaft is back', [], [], 'main shaft is back'],
  ])('%s', (text, parts, machines, want) => { expect(said(text, parts, machines)).toBe(want); });

  // Names heard as everyday words, split, joined and with fillers in them; ours (common practice, no source).
  it.each([
    ['cool tours are worn thin', 'coulters', 'coulters are worn thin'],
    ['psych will sections are broke', 'sickle sections', 'sickle sections are broke'],
    ['phony motor is stuck', 'pony motor', 'pony motor is stuck'],
    ['the mag needle is back', 'magneto', 'the magneto is back'],
    ['throw out baring howls', 'throwout bearing', 'throwout bearing howls'],
    ['half chaff is out', 'half shaft', 'half shaft is out'],
    ['did up the chair bolts', 'share bolts', 'did up the share bolts'],
    ['left king bin has play', 'left king pin', 'left king pin has play'],
    ['pall on the winch was burred', 'pawl', 'pawl on the winch was burred'],
    ['clutch desk is worn', 'clutch disc', 'clutch disc is worn'],
    ['adjusted the regular later', 'regulator', 'adjusted the regulator'],
    ['vac you um pump veins were sticking', 'vacuum pump vanes', 'vacuum pump vanes were sticking'],
    ['carb your etter is off', 'carburettor', 'carburettor is off'],
    ['the pulse eater on number two sticks', 'pulsator', 'the pulsator on number two sticks'],
    ['drawer bar pin is bent', 'drawbar pin', 'drawbar pin is bent'],
    ['pissed on rings are stuck', 'piston rings', 'piston rings are stuck'],
    ['the come rod cap is finger tight', 'con rod cap', 'the con rod cap is finger tight'],
    ['governor wait spring snapped', 'governor weight spring', 'governor weight spring snapped'],
    ['got the not her off the binder', 'knotter', 'got the knotter off the binder'],
    ['what is holding up the plunder', 'plunger', 'what is holding up the plunger'],
    ['number three quail came out today', 'number three quill', 'number three quill came out today'],
    ['how many hours are in the nodder since May', 'knotter', 'how many hours are in the knotter since may'],
    ['the glad on the feed pump is packed', 'feed pump gland', 'the gland on the feed pump is packed'],
    ['cross head pin is loose', 'crosshead pin', 'crosshead pin is loose'],
    ['left king pinbush is worn', 'left kingpin bush', 'left kingpin bush is worn'],
    ['and the commentator is grooved', 'commutator', 'and the commutator is grooved'],
    ['a pair of letters for eight dollars, bought them', 'leathers', 'a pair of letters for eight dollars , bought them'],
    ['apple crush her roll is split', 'apple crusher roll', 'apple crusher roll is split'],
  ])('hears a name through: %s', (text, part, want) => { expect(said(text, [part])).toBe(want); });

  // Ordinary talk beside names that sound a little like it; each stands as it was said.
  it.each([
    ['he took us on a cool tour of the museum', ['coulters']], ['three quarters of an hour on the magneto', ['heron']], ['slid it on dry', ['slide']], ['the bearing cup is scored', ['bearing cap']],
    ['daughter will help roll her in', ['rollers']], ['number nine cell', ['sails']], ['slacken it by a single flat', ['sickle']], ['lift the drum in on Saturday', ['left rear drum']],
    ['the trucker brought it', ['truck']], ['we broke the seal', ['brake']],
    ['the commentator on the radio said rain', ['commutator']], ['six point three volts', ['bolts']], ['a hundred and eighty bucks', ['blocks']], ['the straw walker cranks are fine', ['straw walkers']],
    ['the left front wheel is off', ['right front wheel']], ['the top hose is soft', ['bottom hose']], ['platform one is on', ['platform']], ['see it again on Friday', ['seat']],
    ['oil pump is out', ['coil pump']], ['he had a crack at the crown', ['crank']], ['painted it with grey epoxy', ['gearbox']], ['hours on the radiator', ['housing']],
    ['I regularly grease it, later than I should', ['regulator']], ['the phone rang', ['fan ring']], ['cedar posts came', ['seeder']], ['tap it home', ['tappet']], ['got the fan belt on', ['pan belt']], ['half the bolts are out', ['half shaft']], ['4.5 h on harness yesterday', ['main harness']], ['the fan bolt is frayed', ['fan belt']],
  ])('leaves ordinary talk alone: %s', (text, parts) => { expect(said(text, parts)).toBe(said(text)); });

  it.each([['vein spring', 'vane spring'], ['the dip stick is bent', 'the dipstick is bent'], ['few pump is leaking', 'fuel pump is leaking'], ['few bolts left', 'few bolts left'], ['the die nemo is dead', 'the dynamo is dead'], ['the king pin is loose', 'the king pin is loose'], ['main spring', 'main spring'], ['chain guard', 'chain guard'], ['buckle straps', 'buckle straps'], ['the magnet', 'the magnet'], ['smeared with grease', 'smeared with grease']])('without names of the shop: %s', (text, want) => { expect(said(text)).toBe(want); });

  it.each([
    ['took a break for tea', ['brake']], ['where is the plate', ['wear plates']], ['my barber has a piano', ['barrel']], ['a dozen kilos of it', []], ['he was bold', ['king bolt']], ['the letter came', ['pump leathers']],
  ])('leaves alone what is meant: %s', (text, parts) => { expect(said(text, parts)).toBe(text); });

  it('keeps what was said, and traces the change', () => {
    const sheet = openSheet('hug bearing is rough', { at: AT, parts: ['hub bearing'] });
    expect(sheet.tokens[0]).toMatchObject({ text: 'hug', low: 'hub', mended: true, start: 0, end: 3 });
    expect(sheet.trace.some(t => t.stage === 'mend' && t.text === 'hug' && t.gave === 'hub')).toBe(true);
  });
});
