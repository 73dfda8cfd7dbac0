import type { FetchedWeather } from '../../domain/answers/forecast.ts';
import type { Now } from '../../domain/answers/given.ts';
import type { Shop } from '../../domain/log/shop.ts';
import { skiesSaid } from '../../domain/plan/from-shop/jobs.ts';
import type { Weather } from '../../domain/plan/forecast.ts';

/** The weather as the planner takes it: the person's words day by day, which win, and the fetched forecast where there is one. */
export const weatherFor = (shop: Shop, now: Now, fetched?: Pick<FetchedWeather, 'blocks'>): Weather =>
  ({ said: skiesSaid(shop, now), ...(fetched ? { forecast: fetched.blocks } : {}) });
