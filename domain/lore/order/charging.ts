import { usual } from './rule.ts';

export const charging = usual('charging', [
  ['generator bracket', 'generator', 'it hangs on the bracket'],
  ['test the generator', 'generator', 'it is motored on the bench first'],
  ['generator pulley', 'generator', 'its nut is tightened in the vise'],
  ['wiring harness', 'voltage regulator', 'its wires come out of the harness'],
  ['generator', 'voltage regulator', 'a regulator is set to its own generator'],
  ['wiring harness', 'ammeter', 'its wires come out of the harness'],
  ['starter', 'starter cable', 'the cable ends on it'],
  ['paint the battery box', 'battery', 'acid eats bare metal'],
  ['battery box', 'battery', 'it stands in the box'],
  ['wiring harness', 'battery', 'nothing may be live while wires are made up'],
  ['ground strap', 'battery', 'a painted joint is no ground: it is cleaned and bolted first'],
  ['starter cable', 'battery ground cable', 'the grounded post is taken off first and put on last, so that a slipped wrench makes no arc',
    'handbook practice: disconnect the grounded post first'],
  ['charge the battery', 'start the engine', 'a weak one burns the starter contacts'],
  ['polarize the generator', 'start the engine', 'after any work on it a generator may have lost its polarity; an alternator is never polarized',
    'handbook practice: polarise a generator, never an alternator'],
]);
