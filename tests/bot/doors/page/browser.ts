import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { OggOpusDecoder } from 'ogg-opus-decoder';
import { chromium, type Browser, type Page as Tab } from 'playwright-core';
import { joined, wav } from '../../../../bot/doors/page/web/wav.ts';

const CHROMIUM = '/usr/bin/chromium';
const RATE = 16_000;

export const browserThere = existsSync(CHROMIUM);
if (!browserThere) console.warn(`skipped: the page in a browser (no ${CHROMIUM}; on Debian: apt-get install chromium)`);

export const launch = (args: string[] = []): Promise<Browser> =>
  chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox', '--autoplay-policy=no-user-gesture-required', ...args] });

/** A browser whose microphone hears the WAV at `file` from the moment it is opened, once. */
export const launchWithMicrophone = (file: string): Promise<Browser> =>
  launch(['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream', `--use-file-for-fake-audio-capture=${file}%noloop`]);

/** Opens the page in a tab and waits until it is ready; whatever the console complains of is gathered in `complaints`. */
export async function openTab(tab: Tab, url: string): Promise<string[]> {
  const complaints: string[] = [];
  tab.on('console', m => { if (m.type() === 'error' || m.type() === 'warning') complaints.push(`${m.text()} ${m.location().url}`); });
  tab.on('pageerror', e => { complaints.push(e.message); });
  await tab.goto(url);
  await tab.waitForSelector('html[data-ready]');
  return complaints;
}

/** said.ogg: "Radiator is off. The top tank is split along the seam, so it has to be soldered.", read by flite's voice slt (Debian). */
async function spoken(): Promise<Float32Array> {
  const decoder = new OggOpusDecoder({ sampleRate: RATE } as never);
  await decoder.ready;
  const { channelData } = await decoder.decodeFile(new Uint8Array(readFileSync(new URL('./said.ogg', import.meta.url))));
  decoder.free();
  return channelData[0]!;
}

const silence = (seconds: number): Float32Array => new Float32Array(Math.round(seconds * RATE));

/** A WAV of the sentence said `times` times with `pause` seconds of silence around each, and of how long one of them is. */
export async function microphoneFile(times: number, pause: number): Promise<{ file: string; sentenceSeconds: number }> {
  const said = await spoken();
  const file = join(mkdtempSync(join(tmpdir(), 'pawl-mic-')), 'mic.wav');
  const pieces = [silence(pause), ...Array.from({ length: times }, () => [said, silence(pause)]).flat()];
  writeFileSync(file, Buffer.from(wav(joined(pieces), RATE)));
  return { file, sentenceSeconds: said.length / RATE };
}

/** Rate, length in seconds and root mean square of a WAV of 16-bit samples, read by its own header. */
export function soundOf(bytes: Uint8Array): { rate: number; seconds: number; rms: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const rate = view.getUint32(24, true), n = (bytes.byteLength - 44) / 2;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += (view.getInt16(44 + i * 2, true) / 32_768) ** 2;
  return { rate, seconds: n / rate, rms: Math.sqrt(sum / n) };
}
