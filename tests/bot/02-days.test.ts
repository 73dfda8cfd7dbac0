import { describe, expect, test } from 'vitest';
import { days } from './day-script.ts';
import { shopInMemory } from './shop-in-memory.ts';

/** Days at the bench, played through the turn: every answer word for word. */
describe.each(days())('$name', day => {
  test(day.about.trim(), () => {
    const shop = shopInMemory();
    for (const { at, you, bot } of day.exchanges) {
      expect(bot.length, `"${you}" has no answer in the script`).toBeGreaterThan(0);
      expect({ you, bot: shop.say(you, at).say.split('\n') }).toEqual({ you, bot });
    }
    shop.close();
  });
});
