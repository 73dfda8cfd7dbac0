import { readConfig } from '../config.ts';
import { loadSample } from '../sample.ts';
import { takeTurn } from '../turn.ts';
import { openShop } from '../shop.ts';
import { saveSnapshot } from '../../domain/log/keeper.ts';
import { argumentsOf, command, UsageError } from './arguments.ts';

/** Loads the sample shop: three months of a restoration, as notes. */
await command(() => {
  const { values } = argumentsOf({ data: { type: 'string' } }, 'Use: npm run sample -- --data DIR');
  const config = readConfig();
  const { log, deps } = openShop(values.data ?? config.dataDir, config.zone);
  try {
    const result = loadSample(deps, takeTurn);
    if ('refused' in result) throw new UsageError(result.refused);
    saveSnapshot(log);
    console.log(`${result.loaded} notes of the sample shop are in ${log.store.file}.`);
  } finally { log.store.close(); }
});
