/** How far something long must get before it is told again. */
const STEP = 0.05;

/** Tells the first step, the last, and those between that are worth telling. */
export function nowAndThen(tell: (share: number, of: number) => void): (share: number, of: number) => void {
  let told = -1;
  return (share, of) => {
    if (share < 1 && share < told + STEP) return;
    told = share;
    tell(share, of);
  };
}
