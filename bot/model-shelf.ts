import { join } from 'node:path';
import { readSetting, writeSetting } from '../domain/store/settings.ts';
import type { Store } from '../domain/store/open.ts';
import type { Hearer, HearerOptions } from '../nlp/hear/hear.ts';
import { missingFiles } from '../nlp/hear/model-files.ts';
import type { ChangeModel } from './incoming.ts';
import type { Tell } from './receive.ts';
import { nowAndThen } from './now-and-then.ts';
import { BUILT_IN_USED, NONE_LEFT, sayDamaged, sayFetched, sayFetchStopped, sayUsing } from './say/model.ts';

const CHOSEN = 'speech model';

/** Which model to hear with: what the environment says, else what was chosen in talk, else the one that comes along. */
interface ModelShelf {
  options(): HearerOptions;
  /** For the turn: whether the environment decides, and whether a model need not be fetched. */
  models: { setByHand: boolean; isHere(model: string): boolean };
  /** Fetches the model if it is not here (so only at the person's yes), and hears with it; the one that comes along when none is named. Gives a sentence. */
  change(hearer: Hearer, model: ChangeModel['model'], tell: Tell): Promise<string>;
  /** The program stops: what is being fetched is not waited for. */
  stop(): void;
}

export function modelShelf(store: Store, dataDir: string, byHand: HearerOptions): ModelShelf {
  const modelsDir = join(dataDir, 'models');
  const setByHand = byHand.model !== undefined || byHand.modelsDir !== undefined;
  const isHere = (model: string) => missingFiles({ modelsDir, model }).length === 0;
  let stop = (): void => {};
  const stopped = new Promise<void>(resolve => { stop = resolve; });
  const options = (): HearerOptions => {
    const model = setByHand ? undefined : readSetting(store, CHOSEN);
    return model === undefined ? byHand : { modelsDir, model };
  };
  return {
    options,
    models: { setByHand, isHere },
    stop,
    async change(hearer, model, tell) {
      const got = model && !isHere(model.model)
        ? await Promise.race([hearer.fetch({ modelsDir, model: model.model }, nowAndThen((share, bytes) => tell(sayFetched(model.say, share, bytes), share >= 1))), stopped])
        : 'none needed';
      if (!got) return sayFetchStopped(model!.say);
      if (got !== 'none needed' && !got.ok) return got.why;
      writeSetting(store, CHOSEN, model?.model);
      const used = await hearer.use(options());
      if (used === undefined) return NONE_LEFT;
      if (!model) return BUILT_IN_USED;
      if (used === model.model) return sayUsing(model.say, got === 'none needed' ? undefined : got.checked);
      writeSetting(store, CHOSEN, undefined);
      return sayDamaged(model.say);
    },
  };
}
