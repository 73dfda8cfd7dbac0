import { axlesAndWheels } from './axles-and-wheels.ts';
import { belts } from './belts.ts';
import { brakes } from './brakes.ts';
import { charging } from './charging.ts';
import { clutch } from './clutch.ts';
import { cooling } from './cooling.ts';
import { engine } from './engine.ts';
import { fuel } from './fuel.ts';
import { hydraulics } from './hydraulics.ts';
import { ignition } from './ignition.ts';
import { paint } from './paint.ts';
import type { OrderRule } from './rule.ts';
import { sheetMetal } from './sheet-metal.ts';
import { steering } from './steering.ts';

/** The usual order of assembly, topic by topic. */
export const orderRules: readonly OrderRule[] = [
  ...engine, ...cooling, ...belts, ...steering, ...axlesAndWheels, ...fuel, ...charging, ...ignition, ...brakes, ...clutch, ...hydraulics,
  ...sheetMetal, ...paint,
];
