import { HUB_MODELS, type HubModel } from '../../nlp/hear/hub-models.ts';
import { listed } from './words.ts';

const size = ({ megabytes }: HubModel): string => (megabytes === undefined ? '' : `about ${megabytes} MB`);

export const WHICH_MODELS = `I can hear with a larger model, which takes longer: ${listed(HUB_MODELS.map(m => `${m.say} (${size(m)})`), 'or')}. Say "get the speech model ${HUB_MODELS[1]!.say}"; "use the built-in speech model" goes back.`;

/** The one question before anything is fetched. */
export const askFetch = (m: HubModel): string =>
  `${m.say} is ${size(m) || 'of a size I don\'t know'}, comes from the public model hub and takes longer to hear a note. Only its name leaves this computer, and each file is checked by the size and the hash that the hub tells. Fetch it?`;

export const FETCHING = 'Fetching it; I go on hearing with the model I have until it is here.';
export const NOT_FETCHED = 'Nothing is fetched; I go on with the model I have.';
export const ONLY_RUNNING = 'The speech model can be changed only while Pawl runs: start it with npm start and say that there.';
export const SET_BY_HAND = 'PAWL_MODELS or PAWL_MODEL says which model I hear with; take that setting away first, then say it again.';

/** How far fetching is: "Fetching small.en, 250 MB… 40 %". `bytes`: in all, 0 when unknown. */
export const sayFetched = (say: string, share: number, bytes: number): string =>
  (bytes ? `Fetching ${say}, ${Math.max(1, Math.round(bytes / 1e6))} MB… ${Math.floor(share * 100)} %` : `Fetching ${say}…`);

export const sayUsing = (say: string, checked?: 'size and hash' | 'size'): string =>
  `I hear with ${say} from now on${checked ? `; its files are right by ${checked === 'size' ? 'size (the hub told no hash for some)' : 'size and hash'}` : ''}.`;
export const sayFetchStopped = (say: string): string => `I was stopped before ${say} was here; say "get the speech model ${say}" again.`;
export const BUILT_IN_USED = 'I hear with the model that came along from now on.';
export const sayDamaged = (say: string): string => `${say} can't be loaded, so I go on with the model that came along.`;
export const NONE_LEFT = 'No speech model can be loaded. Put the files of nlp/hear/model back: they come with the program.';

/** How far hearing is: "Hearing 3 min of talk… 40 %". `seconds`: of talk. */
export const sayHearing = (share: number, seconds: number): string =>
  (share >= 1 ? `Heard ${length(seconds)} of talk.` : `Hearing ${length(seconds)} of talk… ${Math.floor(share * 100)} %`);

const length = (seconds: number): string => (seconds < 90 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`);
