import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { z } from 'zod';

/** A forecast as it is kept on disk: the last good answer, with when it was fetched and until when it is fresh (ms since 1970). */
const Kept = z.object({
  provider: z.string(), latitude: z.number(), longitude: z.number(), fetched: z.number(), freshUntil: z.number(), lastModified: z.string().optional(),
  blocks: z.array(z.object({
    startUtc: z.string(), hours: z.number(), tempC: z.number(), dewC: z.number(), rh: z.number(), popPct: z.number().nullable(), precipMm: z.number(),
    windMs: z.number(), gustMs: z.number().nullable(),
  })),
});
export type KeptForecast = z.infer<typeof Kept>;

/** The kept forecast; a file that is not there or not whole is as good as none. */
export function readKept(path: string): KeptForecast | undefined {
  try {
    const read = Kept.safeParse(JSON.parse(readFileSync(path, 'utf8')));
    return read.success ? read.data : undefined;
  } catch { return undefined; }
}

/** Written beside and renamed, so that a cut never leaves half a forecast. */
export function keep(path: string, forecast: KeptForecast): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(`${path}.part`, JSON.stringify(forecast));
  renameSync(`${path}.part`, path);
}
