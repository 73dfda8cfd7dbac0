import { createRequire } from 'node:module';
import type { Tensor } from 'onnxruntime-node';

/** What the runtime gives back of an output: its numbers, under the one or the other name. */
interface Output { data?: ArrayBufferView; cpuData?: ArrayBufferView }

/** The runtime's own session, which answers at once: its public face answers later, and a note is read in one go. */
interface Session {
  loadModel(path: string, options: object): void;
  loadModel(bytes: ArrayBufferLike, offset: number, length: number, options: object): void;
  run(feeds: Record<string, Tensor>, fetches: Record<string, null>, options: object): Record<string, Output>;
}
interface Runtime { binding: { InferenceSession: new () => Session }; initOrt(): void }

/** Opens a model, a file by its path or its bytes, to be run at once: inputs by name in, the numbers of one output out. Throws when it is missing or damaged. */
export function openNow(model: string | Uint8Array, options: object): (inputs: Record<string, Tensor>, output: string) => ArrayBufferView {
  const { binding, initOrt } = createRequire(import.meta.url)('onnxruntime-node/dist/binding.js') as Runtime;
  initOrt();
  const session = new binding.InferenceSession();
  if (typeof model === 'string') session.loadModel(model, options);
  else session.loadModel(model.buffer, model.byteOffset, model.byteLength, options);
  return (inputs, output) => {
    const told = session.run(inputs, { [output]: null }, {})[output]!;
    return (told.data ?? told.cpuData)!;
  };
}
