import { BENCH } from '../../bot/incoming.ts';
import { receiver } from '../../bot/receive.ts';
import { createService } from '../../bot/serve.ts';
import { openShop } from '../../bot/shop.ts';

/**
 * Says notes `from`..`to` in the shop in `dir`, one after the other, and prints each number once its reply is there. It is killed at a
 * random moment by the test that runs it, and run again from a little before the last number that it printed.
 */
const [dir, from, to] = [process.argv[2]!, Number(process.argv[3]), Number(process.argv[4])];
const { log, deps } = openShop(dir, 'Europe/Paris');
const service = createService({ deps, receiving: receiver({ store: log.store }) });
for (let n = from; n < to; n++) {
  const text = `Greased the ${['left front', 'right front', 'left rear', 'right rear'][n % 4]} hub.`;
  await service.take({ key: `crash:${n}`, door: 'command', chat: BENCH, at: '2026-03-02T10:00:00+01:00', text });
  process.stdout.write(`${n}\n`);
}
await service.close();
log.store.close();
