import { intake } from '../../../../domain/store/intake.ts';
import { readSetting, writeSetting } from '../../../../domain/store/settings.ts';
import { openHouse, type House } from './harness.ts';

/** The door in a process of its own, to be killed: counts in the log itself how often each note was taken. */
const [dir, url, token] = process.argv.slice(2) as [string, string, string];
const house: House = openHouse({ url, token }, {
  dir,
  // Called inside the transaction of the done-mark.
  answer: m => { writeSetting(house.store, `taken ${m.text}`, String(Number(readSetting(house.store, `taken ${m.text}`) ?? 0) + 1)); return {}; },
});
await house.door.opened;
process.send?.(`open, ${intake.parked(house.store).length} set aside`);
