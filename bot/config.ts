import { homedir } from 'node:os';
import { join } from 'node:path';
import { IANAZone } from 'luxon';
import { z } from 'zod';

/**
 * Every setting of the program, read once from the environment. Nothing needs to be set: the defaults run the shop on this computer alone.
 */
const text = z.string().trim().min(1);
const Environment = z.object({
  PAWL_DATA: text.optional(),
  PAWL_PORT: z.string().trim().regex(/^\d{1,5}$/, 'must be a port number, or 0 for any free one').transform(Number)
    .refine(n => n <= 65535, 'must be at most 65535').default(4127),
  PAWL_TZ: text.refine(z => IANAZone.isValidZone(z), 'must be a time zone by its IANA name, such as Europe/Dublin').optional(),
  // The shape of a bot token, so that a slip of the clipboard stops here and not at the far end.
  PAWL_TELEGRAM_TOKEN: z.string().trim().regex(/^\d+:[A-Za-z0-9_-]{20,}$/, 'must look like 123456:ABC… as the bot was given it').optional(),
  PAWL_TELEGRAM_API: z.url({ protocol: /^https?$/, error: 'must be an http or https address' }).optional(),
  PAWL_MODELS: text.optional(),
  PAWL_MODEL: text.optional(),
  PAWL_WEATHER: z.enum(['open-meteo', 'met-norway'], { error: 'must be open-meteo or met-norway' }).optional(),
  PAWL_PLACE: z.string().trim().regex(/^-?\d{1,2}(\.\d+)?,\s*-?\d{1,3}(\.\d+)?$/, 'must be latitude,longitude such as 52.35,-7.70').optional(),
  PAWL_CONTACT: text.optional(),
});

export interface Config {
  dataDir: string;
  port: number;
  zone: string;
  telegram?: { token: string; api?: string };
  hearing: { modelsDir?: string; model?: string };
  /** Opt-in: without both a service and a place nothing about the weather leaves this computer. */
  weather?: { service: 'open-meteo' | 'met-norway'; latitude: number; longitude: number; contact?: string };
}

/** A setting that can't be used: `message` names it and says what it must be; the value itself is not repeated, as it may be a secret. */
export class ConfigError extends Error {}

/** Where a person's programs keep their data on this system, by the system's own convention. */
function userDataDir(env: NodeJS.ProcessEnv): string {
  if (process.platform === 'win32') return env.LOCALAPPDATA ?? join(homedir(), 'AppData', 'Local');
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Application Support');
  return env.XDG_DATA_HOME || join(homedir(), '.local', 'share');
}

/** Empty settings count as not set, so that `PAWL_TZ= npm start` behaves as expected. */
const given = (env: NodeJS.ProcessEnv) => Object.fromEntries(Object.entries(env).filter(([, v]) => v !== undefined && v.trim() !== ''));

/** Reads the settings. Throws ConfigError naming the first wrong one. */
export function readConfig(env: NodeJS.ProcessEnv = process.env): Config {
  const unknown = Object.keys(given(env)).find(k => k.startsWith('PAWL_') && !(k in Environment.shape));
  if (unknown) throw new ConfigError(`${unknown} is not a setting of Pawl. The settings are ${Object.keys(Environment.shape).join(', ')}.`);
  const read = Environment.safeParse(given(env));
  if (!read.success) {
    const { path, message } = read.error.issues[0]!;
    throw new ConfigError(`${path.join('.')} ${message}.`);
  }
  const e = read.data;
  if (e.PAWL_WEATHER && !e.PAWL_PLACE) throw new ConfigError('PAWL_PLACE must be set too when PAWL_WEATHER is: the forecast needs latitude,longitude.');
  const [latitude = NaN, longitude = NaN] = e.PAWL_PLACE?.split(',').map(Number) ?? [];
  if (e.PAWL_PLACE && (Math.abs(latitude) > 90 || Math.abs(longitude) > 180)) throw new ConfigError('PAWL_PLACE must be latitude (-90 to 90),longitude (-180 to 180).');
  return {
    dataDir: e.PAWL_DATA ?? join(userDataDir(env), 'pawl'),
    port: e.PAWL_PORT,
    zone: e.PAWL_TZ ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
    telegram: e.PAWL_TELEGRAM_TOKEN ? { token: e.PAWL_TELEGRAM_TOKEN, api: e.PAWL_TELEGRAM_API } : undefined,
    hearing: { modelsDir: e.PAWL_MODELS, model: e.PAWL_MODEL },
    weather: e.PAWL_WEATHER ? { service: e.PAWL_WEATHER, latitude, longitude, contact: e.PAWL_CONTACT } : undefined,
  };
}
