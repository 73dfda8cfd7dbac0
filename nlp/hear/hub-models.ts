/** A model of the hub, by the name that is said: "base.en". */
export interface HubModel {
  say: string;
  /** Its name at the hub, in the layout that the speech library reads. */
  model: string;
  /** About; undefined when it isn't one of the known ones. */
  megabytes?: number;
}

/**
 * English models of the same family. Megabytes: the published number of parameters (74, 244 and 769 million) at a byte each and a little
 * for the rest; what a file must be exactly is told by the hub when it is fetched.
 */
export const HUB_MODELS: readonly HubModel[] = [
  { say: 'base.en', model: 'Xenova/whisper-base.en', megabytes: 80 },
  { say: 'small.en', model: 'Xenova/whisper-small.en', megabytes: 250 },
  { say: 'medium.en', model: 'Xenova/whisper-medium.en', megabytes: 790 },
];

/** What is wanted of the speech model: another one, the one that comes along, or to know which there are. */
export type ModelWish = { wish: 'other'; model: HubModel } | { wish: 'built-in' } | { wish: 'which' };

const WISH = new RegExp(
  String.raw`^(?:(?:can|could|would) you )?(?:please )?(?:get|fetch|download|load|use|try|take|want|switch to|change to|go back to|hear with|listen with|(?:which|what)(?: other)? (?:ones|are there|is there|can you use)?) ?(?:me )?(?:the |a |an |your )?`
  + String.raw`(?<size>better|bigger|larger|smaller|other|another|different|built-in|built in|usual|old|first|own)? ?(?:(?:speech|hearing|voice) models?|model for (?:hearing|speech|voice))(?: called| named)?:? ?(?<name>[\w./-]+)?(?: are there| is there)?(?: again)?$`, 'i');
const NAMED = /^(?:please )?(?:hear|listen) with (?:the )?(?<name>base|small|medium)(?:\.en)?(?: model)?$/i;

/** Reads a wish about the speech model out of a whole sentence; undefined when it is about anything else. */
export function readModelWish(text: string): ModelWish | undefined {
  const low = text.replace(/[’‘]/g, "'").replace(/[.!?]+\s*$/, '').replace(/\s+/g, ' ').trim();
  const said = WISH.exec(low) ?? NAMED.exec(low);
  if (!said) return undefined;
  const { size = '', name } = said.groups as { size?: string; name?: string };
  if (name) return named(name);
  return /built|usual|old|first|own|smaller/i.test(size) ? { wish: 'built-in' } : { wish: 'which' };
}

function named(name: string): ModelWish | undefined {
  if (/^(?:whisper-)?tiny(?:\.en)?$/i.test(name)) return { wish: 'built-in' };
  const known = HUB_MODELS.find(({ say, model }) => [say, say.replace('.en', ''), model, `whisper-${say}`].includes(name) || model.toLowerCase() === name.toLowerCase());
  if (known) return { wish: 'other', model: known };
  // A name of two parts and nothing that could lead out of the folder of models.
  return /^[\w-][\w.-]*\/[\w-][\w.-]*$/.test(name) && !name.includes('..') ? { wish: 'other', model: { say: name, model: name } } : { wish: 'which' };
}
