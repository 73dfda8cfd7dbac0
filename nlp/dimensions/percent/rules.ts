import { N, type Piece, type Rule, type Slate, runRules } from '../rule.ts';

const RULES: Rule<'percent'>[] = [
  { name: '# percent', pattern: new RegExp(`${N} ?(?:%|percents?(?![a-z])|per cents?(?![a-z])|pct\\b|pc\\b)`, 'g'), make: (_m, [n]) => n && { value: n.value } },
];

/** "75 percent", "seventy per cent", "50%". */
export const percentPieces = (slate: Slate): Piece<'percent'>[] => runRules('percent', RULES, slate);
