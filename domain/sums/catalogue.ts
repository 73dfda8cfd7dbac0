import { adjustableSheave } from './adjustable-sheave.ts';
import { alternatorSpeed } from './alternator-speed.ts';
import { antifreeze } from './antifreeze.ts';
import { battery } from './battery.ts';
import { bearingGrease } from './bearing-grease.ts';
import { belt } from './belt.ts';
import { beltNumber } from './belt-number.ts';
import { beltTension } from './belt-tension.ts';
import { boiling } from './boiling.ts';
import { boltStrength } from './bolt-strength.ts';
import { bushing } from './bushing.ts';
import { clearanceHole } from './clearance-hole.ts';
import { compression } from './compression.ts';
import { coverage } from './coverage.ts';
import { dewPoint } from './dew-point.ts';
import { displacement } from './displacement.ts';
import { drillSize } from './drill-size.ts';
import { endPlay } from './end-play.ts';
import { filmThickness } from './film-thickness.ts';
import { fuse } from './fuse.ts';
import { gearing } from './gearing.ts';
import { hydraulic } from './hydraulic.ts';
import { isoFit } from './iso-fit.ts';
import { landed, mileage } from './landed.ts';
import { ohmsLaw } from './ohms-law.ts';
import { paintMix } from './paint-mix.ts';
import { pipeThread } from './pipe-thread.ts';
import { pressFit } from './press-fit.ts';
import { pressureLeak } from './pressure-leak.ts';
import { ringGap } from './ring-gap.ts';
import { roadSpeed } from './road-speed.ts';
import { sheave } from './sheave.ts';
import { shims } from './shims.ts';
import { shrinkFit } from './shrink-fit.ts';
import { sixToTwelve } from './six-to-twelve.ts';
import { sling } from './sling.ts';
import { slingCapacity } from './sling-capacity.ts';
import { substitute } from './substitute.ts';
import type { Sum } from './sum.ts';
import { tapDrill } from './tap-drill.ts';
import { torque } from './torque.ts';
import { twoPoint } from './two-point.ts';
import { twoStroke } from './two-stroke.ts';
import { unitConversion } from './unit-conversion.ts';
import { voltDrop } from './volt-drop.ts';
import { wireGauge } from './wire-gauge.ts';

/** The fourteen sums of the note contract, in its order. */
export const CONTRACT_SUMS: readonly Sum[] = [
  torque,
  belt,
  sheave,
  tapDrill,
  shims,
  voltDrop,
  dewPoint,
  antifreeze,
  sling,
  endPlay,
  shrinkFit,
  coverage,
  unitConversion,
  landed,
];

/** Further sums, in the contract's manner: what each answers and what it is given is written in the sum itself. */
const FURTHER_SUMS: readonly Sum[] = [
  boltStrength,
  substitute,
  clearanceHole,
  pipeThread,
  drillSize,
  adjustableSheave,
  beltNumber,
  beltTension,
  boiling,
  pressureLeak,
  wireGauge,
  fuse,
  ohmsLaw,
  sixToTwelve,
  alternatorSpeed,
  battery,
  slingCapacity,
  twoPoint,
  isoFit,
  pressFit,
  bushing,
  bearingGrease,
  displacement,
  compression,
  hydraulic,
  ringGap,
  roadSpeed,
  gearing,
  twoStroke,
  filmThickness,
  paintMix,
  mileage,
];

export const SUMS: readonly Sum[] = [...CONTRACT_SUMS, ...FURTHER_SUMS];
