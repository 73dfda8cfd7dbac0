import { describe } from 'vitest';
import { checkAll } from './support.ts';

describe('shrink fits', () =>
  checkAll([
    {
      of: 'shrinkFit',
      given: { diameter: 12, interference: 0.018, clearance: 0.004, material: 'steel', diameterUnit: 'in' },
      name: 'rise',
      unit: '°F',
      is: 282,
      within: 1,
      source: 'P3 at 6.5',
    },
    {
      of: 'shrinkFit',
      given: { diameter: 2, interference: 0.003, material: 'bronze', diameterUnit: 'in' },
      name: 'rise',
      unit: '°F',
      is: 150,
      within: 1,
      source: 'P5',
    },
    {
      of: 'shrinkFit',
      given: { diameter: 50, diameterUnit: 'mm', interference: 0.05, material: 'cast iron' },
      name: 'rise',
      unit: '°C',
      is: 0.05 / (50 * 6e-6 * 1.8),
      within: 1,
      source: 'gray iron 6.0 [sd][tq]',
    },
    {
      of: 'shrinkFit',
      given: { diameter: 2.75, interference: 0.0025, material: 'aluminum housing', diameterUnit: 'in' },
      name: 'rise',
      unit: '°F',
      is: 0.0025 / (2.75 * 12.9e-6),
      within: 1,
      source: 'wrought aluminium 12.6 to 13.1 [sd]',
    },
  ]));
