import { afterAll, describe, expect, it } from 'vitest';
import { openSimulator } from '../../../bot/planning/simulator.ts';
import { simulateHere } from '../../../bot/planning/simulate-here.ts';
import { madeUpShop } from '../../domain/plan/tools/made-up-shop.ts';

const simulator = openSimulator();
afterAll(() => simulator.close());

describe('the thread that simulates', () => {
  it('comes to the same as here, while this thread goes on', async () => {
    const input = madeUpShop(60);
    let ticks = 0;
    const clock = setInterval(() => ticks++, 5);
    const [away] = await simulator.simulate([input]);
    clearInterval(clock);
    expect(away).toEqual(simulateHere([input])[0]);
    expect(ticks).toBeGreaterThan(0);
  });
  it('takes two cases with the same luck, and several at once', async () => {
    const [a, b] = [madeUpShop(10), madeUpShop(11)];
    const all = await Promise.all([simulator.simulate([a, b]), simulator.simulate([b])]);
    expect(all[0]).toEqual(simulateHere([a, b]));
    expect(all[1]).toEqual(simulateHere([b]));
  });
  it('says so when it is stopped with work in hand', async () => {
    const other = openSimulator();
    const lost = expect(other.simulate([madeUpShop(30)])).rejects.toThrow('stopping');
    await other.close();
    await lost;
  });
});
