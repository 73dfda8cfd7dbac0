import { CONVERT } from './convert.ts';
import { ALTERNATOR, BATTERY, FUSE, OHMS, SIX_TO_TWELVE, VOLT_DROP, WIRE_SIZE } from './electric.ts';
import { BEARING_GREASE, BOLT_STRENGTH, BUSHING, DRILL_SIZE, ISO_FIT, PRESS_FIT, SUBSTITUTE, WIRE_GAUGE } from './bench.ts';
import { ADJUSTABLE, GEARING, HYDRAULIC, ROAD_SPEED } from './drive.ts';
import { BELT_NUMBER, BELT_TENSION } from './numbered-belts.ts';
import { COMPRESSION, DISPLACEMENT, LEAK, RING_GAP, TWO_STROKE } from './engine.ts';
import { END_PLAY, SHRINK_FIT } from './fits.ts';
import { CLEARANCE, PIPE_THREAD, TAP_DRILL } from './holes.ts';
import type { SumKind } from './kind.ts';
import { LANDED, MILEAGE } from './landed.ts';
import { SLING, SLING_CAPACITY, TWO_POINT } from './lifting.ts';
import { ANTIFREEZE, BOILING } from './coolant.ts';
import { COVERAGE } from './coverage.ts';
import { DEW_POINT } from './dew-point.ts';
import { FILM, PAINT_MIX } from './paint.ts';
import { BELT } from './belt.ts';
import { SHEAVE } from './sheave.ts';
import { SHIMS } from './shims.ts';
import { TORQUE } from './torque.ts';

/** Every sum that can be asked for in words. */
export const SUM_KINDS: readonly SumKind[] = [
  TORQUE, BELT, SHEAVE, TAP_DRILL, SHIMS, VOLT_DROP, DEW_POINT, ANTIFREEZE, SLING, END_PLAY, SHRINK_FIT, COVERAGE, CONVERT, LANDED, MILEAGE,
  CLEARANCE, PIPE_THREAD, WIRE_SIZE, FUSE, OHMS, SIX_TO_TWELVE, BATTERY, ALTERNATOR, BOILING, SLING_CAPACITY, TWO_POINT, PRESS_FIT,
  BEARING_GREASE, BOLT_STRENGTH, BUSHING, DRILL_SIZE, FILM, ISO_FIT, PAINT_MIX, SUBSTITUTE, WIRE_GAUGE, ADJUSTABLE, BELT_NUMBER, BELT_TENSION,
  GEARING, HYDRAULIC, ROAD_SPEED, COMPRESSION, DISPLACEMENT, LEAK, RING_GAP, TWO_STROKE,
];
export const kindOf = (of: string): SumKind | undefined => SUM_KINDS.find(k => k.of === of);
