import { openLog, type Log } from '../domain/log/keeper.ts';
import { openStore } from '../domain/store/open.ts';
import { readNote } from '../nlp/read.ts';
import type { Config } from './config.ts';
import type { Deps } from './turn/deps.ts';
import { shopWeather, type ShopWeather } from './weather/shop-weather.ts';

/** Opens the log in a folder, with what a turn needs; `weather`: the service the person set up. Throws StoreError with a sentence when it can't be opened. */
export function openShop(dir: string, zone: string, weather?: Config['weather']): { log: Log; deps: Deps & { weather: ShopWeather } } {
  const log = openLog(openStore(dir));
  return { log, deps: { log, zone, read: readNote, weather: shopWeather({ store: log.store, zone, dir, config: weather }), onFault: error => console.error('A note could not be read and is kept as it is:', error) } };
}
