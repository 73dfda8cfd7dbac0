import { z } from 'zod';
import { measure, sharedUnit, valueIn } from './given.ts';
import { angleOfLeg, angleOfRise, angleOfSpan, LEAST_ANGLE } from './sling-geometry.ts';
import { ask, refuse, type Outcome } from './sum.ts';

/** How many legs there are, as said. */
export const LEGS = z
  .number()
  .int({ error: 'must be a whole number' })
  .min(1, { error: 'must be one or more' })
  .max(4, { error: 'over four are not worked out here' })
  .optional();

/** Fields that settle the angle of a leg. */
export const ANGLE_SHAPE = {
  angle: z
    .number({ error: 'must be a number' })
    .positive({ error: 'must be over zero' })
    .max(90, { error: 'from the horizontal cannot be over 90°' })
    .optional(),
  ...measure('height', 'length'),
  ...measure('length', 'length'),
  ...measure('span', 'length'),
};
export const ANGLE_FIELDS = {
  angle: 'of the legs from the horizontal, °',
  height: 'hook over the lifting points (instead of the angle), with',
  length: 'length of a leg, or',
  span: 'distance between the lifting points (with the height, or with the length of a leg)',
};

/** The angle from the horizontal in degrees, or what stands in the way: nothing is worked out under 30°. */
export function slingAngle(given: object, assumed: string[]): { angle: number } | { answer: Outcome } {
  const fields = given as { angle?: number; height?: number; length?: number; span?: number };
  const bySpan = fields.length !== undefined && fields.span !== undefined;
  if (fields.angle === undefined && fields.height === undefined && !bySpan) {
    return { answer: ask('angle', 'What angle do the legs make with the horizontal?', ['60', '45', '30']) };
  }
  const angle = fields.angle ?? fromLengths(given, assumed);
  if (typeof angle !== 'number') return { answer: angle };
  if (angle < LEAST_ANGLE - 0.05) {
    return {
      answer: refuse(
        `Legs at ${Math.round(angle)}° from the horizontal are under ${LEAST_ANGLE}°, which rigging practice does not allow: use longer legs or a spreader.`,
      ),
    };
  }
  return { angle };
}

function fromLengths(given: object, assumed: string[]): number | Outcome {
  const unit = sharedUnit(given, ['height', 'length', 'span'], 'in', 'ft or mm', assumed);
  const [height, leg, span] = ['height', 'length', 'span'].map((name) => valueIn(given, name, unit));
  if (height === undefined) return angleOfLeg(leg ?? 0, span ?? 0) ?? refuse(`Legs of ${leg} ${unit} do not reach over ${span} ${unit}.`);
  if (leg !== undefined) return angleOfRise(height, leg) ?? refuse(`A leg of ${leg} ${unit} cannot rise ${height} ${unit}.`);
  if (span !== undefined) return angleOfSpan(height, span);
  return ask('length', 'How long is a leg, or how far apart are the lifting points?');
}
