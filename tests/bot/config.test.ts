import { describe, expect, test } from 'vitest';
import { ConfigError, readConfig } from '../../bot/config.ts';

const wrong = (env: NodeJS.ProcessEnv): string => {
  try { readConfig(env); } catch (error) { if (error instanceof ConfigError) return error.message; }
  throw new Error('it was taken');
};

describe('settings', () => {
  test('none are needed', () => {
    const c = readConfig({ HOME: '/home/sam', XDG_DATA_HOME: '/home/sam/data' });
    expect(c.telegram).toBeUndefined();
    expect(c.weather).toBeUndefined();
    expect(c.zone).toBeTruthy();
    if (process.platform === 'linux') expect(c.dataDir).toBe('/home/sam/data/pawl');
  });
  test('empty ones count as not set', () => expect(readConfig({ PAWL_PORT: '', PAWL_TZ: ' ' }).port).toBe(readConfig({}).port));
  test('port 0 is any free one', () => expect(readConfig({ PAWL_PORT: '0' }).port).toBe(0));
  test.each([
    [{ PAWL_PORT: 'http' }, 'PAWL_PORT'], [{ PAWL_PORT: '70000' }, 'PAWL_PORT'], [{ PAWL_TZ: 'Mars/Olympus' }, 'PAWL_TZ'],
    [{ PAWL_TELEGRAM_API: 'ftp://x' }, 'PAWL_TELEGRAM_API'], [{ PAWL_WEATHER: 'crystal' }, 'PAWL_WEATHER'], [{ PAWL_WEATHER: 'open-meteo' }, 'PAWL_PLACE'],
    [{ PAWL_PLACE: '95,10' }, 'PAWL_PLACE'], [{ PAWL_PROT: '1' }, 'PAWL_PROT'],
  ] as [NodeJS.ProcessEnv, string][])('%o stops the start with a sentence that names it', (env, name) => expect(wrong(env)).toContain(name));
  test('a wrong token is named and never repeated', () => {
    const said = wrong({ PAWL_TELEGRAM_TOKEN: '12:geheim' });
    expect(said).toContain('PAWL_TELEGRAM_TOKEN');
    expect(said).not.toContain('geheim');
  });
});
