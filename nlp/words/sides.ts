/** Words that tell one of a pair or set from another; they belong to the name of a part. */
export const SIDES: ReadonlySet<string> = new Set('left right front rear back top bottom upper lower inner outer inside outside near far off-side offside nearside near-side left-hand right-hand lefthand righthand port starboard middle centre center lh rh outboard inboard'.split(' '));
