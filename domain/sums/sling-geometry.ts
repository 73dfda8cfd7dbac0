/** Least angle of a leg from the horizontal that rigging practice allows, degrees. ASME B30.9 as reprinted. */
export const LEAST_ANGLE = 30;
/** Three legs are the most that are ever counted: a rigid load rides on three, or fewer. Pattern of the OSHA chain tables. */
const MOST_LEGS = 3;

export const countedLegs = (legs: number): number => Math.min(legs, MOST_LEGS);

/** Pull in each leg, in the unit of the load: load shared by the counted legs, over the sine of the angle from the horizontal. */
export const legLoad = (load: number, legs: number, angle: number): number => load / countedLegs(legs) / Math.sin((angle * Math.PI) / 180);

/** Angle from the horizontal of a leg of that length that rises to that height, degrees; undefined where it can't. */
export const angleOfRise = (height: number, leg: number): number | undefined =>
  height > leg ? undefined : (Math.asin(height / leg) * 180) / Math.PI;

/** Angle from the horizontal where the hook hangs `height` over points `span` apart, degrees. */
export const angleOfSpan = (height: number, span: number): number => (Math.atan2(height, span / 2) * 180) / Math.PI;

/** Angle from the horizontal of equal legs of that length over points `span` apart, degrees; undefined where they don't reach. */
export const angleOfLeg = (leg: number, span: number): number | undefined =>
  span >= 2 * leg ? undefined : (Math.acos(span / 2 / leg) * 180) / Math.PI;
