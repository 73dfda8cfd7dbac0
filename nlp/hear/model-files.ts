import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Which model to hear with: a folder of models and a name under it. */
export interface ModelChoice {
  modelsDir: string;
  model: string;
}

/** The one that comes along. */
export const BUILT_IN: ModelChoice = { modelsDir: fileURLToPath(new URL('./model/', import.meta.url)), model: 'openai/whisper-tiny.en' };

/** Files without which the library can't load a model; the weights are the 8-bit ones. */
export const MODEL_FILES = [
  'config.json', 'generation_config.json', 'preprocessor_config.json', 'tokenizer.json', 'tokenizer_config.json',
  'onnx/encoder_model_quantized.onnx', 'onnx/decoder_model_merged_quantized.onnx',
];

/** Names of files that are missing from a model's folder; empty when it is whole. */
export function missingFiles({ modelsDir, model }: ModelChoice): string[] {
  return MODEL_FILES.filter((file) => !existsSync(join(modelsDir, model, file)));
}
