import { describe, expect, it } from 'vitest';
import { drawWeeks } from '../../../bot/draw/weeks.ts';
import { planOf } from '../../../domain/plan/from-shop/plan-of.ts';
import { planWork } from '../../../domain/plan/plan.ts';
import { simulate } from '../../../domain/plan/simulate.ts';
import { BenchShop } from '../../domain/log/tools/shop.ts';

const now = { at: '2026-03-10T09:00:00+00:00', zone: 'UTC' };
const drawn = (...parts: string[]): string => {
  const shop = new BenchShop();
  for (const part of parts) shop.say([{ kind: 'job', do: 'paint', part }]);
  const plan = planOf({ machines: [shop.machine()], shop: shop.log.shop, now });
  const [worked, simulated] = [planWork(plan.input), simulate(plan.input, { runs: 100 })];
  if (!worked.ok || !simulated.ok) throw new Error('no plan');
  return drawWeeks({ shop: plan, plan: worked, simulated, title: 'The weeks ahead' });
};
const words = (svg: string): string[] => [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(m => m[1]!);

describe('the weeks ahead', () => {
  it('has a bar and a name a job, Mondays, and the two dates of the whole', () => {
    const svg = drawn('hood', 'left fender');
    expect(words(svg)).toEqual(expect.arrayContaining(['The weeks ahead', 'paint the hood', 'paint the left fender', '9 Mar', expect.stringMatching(/^half by /), expect.stringMatching(/^four in five by /)]));
    expect([...svg.matchAll(/<rect /g)]).toHaveLength(1 + 2);
  });
  it('keeps what a name holds from being read as drawing', () => expect(drawn('hood <script>')).not.toContain('<script>'));
  it('draws thirty at most, and says how many more there are', () => {
    const svg = drawn(...Array.from({ length: 34 }, (_, i) => `panel ${i + 1}`));
    expect(words(svg)).toContain('and 4 more');
  });
});
