const WORDS = 'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(' ');

/** The value of a single counting word or whole number ("six", "34", "a pair"); undefined otherwise. */
export function countValue(low: string): number | undefined {
  if (/^\d+$/.test(low)) return Number(low);
  const at = WORDS.indexOf(low);
  if (at >= 0) return at;
  return low === 'pair' || low === 'couple' || low === 'both' ? 2 : low === 'dozen' ? 12 : low === 'thirty' ? 30 : low === 'forty' ? 40 : low === 'fifty' ? 50 : undefined;
}
