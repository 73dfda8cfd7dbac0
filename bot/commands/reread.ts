import { readConfig } from '../config.ts';
import { openShop } from '../shop.ts';
import { rereadAll, type Difference } from '../reread.ts';
import { argumentsOf, command } from './arguments.ts';

/** Reads all kept notes again with today's reader and shows what would change. Nothing is written without --keep. */
await command(() => {
  const { values } = argumentsOf({ data: { type: 'string' }, keep: { type: 'boolean' } }, 'Use: npm run reread -- [--data DIR] [--keep]');
  const config = readConfig();
  const { log, deps } = openShop(values.data ?? config.dataDir, config.zone);
  try {
    const { notes, changed, kept } = rereadAll(deps, { keep: values.keep ?? false, onDifference: show });
    console.log(`${notes} notes read again, ${changed} read differently${changed && !kept ? '. Nothing was written; --keep writes it' : kept ? ', and kept so' : ''}.`);
  } finally { log.store.close(); }
});

function show({ note, gone, come }: Difference): void {
  console.log(`${note.at.slice(0, 16)}  ${note.text}`);
  gone.forEach(e => console.log(`  - ${e}`));
  come.forEach(e => console.log(`  + ${e}`));
}
