import { part, trouble } from './dom.ts';
import { showHeard, showLevel, showListening } from './listening.ts';
import { record, whyDeaf, whyNot, type Recorder } from './microphone.ts';
import { peak, wav } from './wav.ts';

/** Held longer than this, letting go ends it; a shorter tap leaves it open until the next tap. */
const TAP_MS = 400;
const SHORTEST_S = 0.3;
/** At 16 kHz this stays well under the 20 MB that one note may have. */
const LONGEST_S = 180;
const SILENT = 0.001;
const KEY = 'F2';

interface Push { stop(): Promise<void>; readonly on: boolean }

/** Push to talk: hold the button or F2 while talking, or tap to start and tap to end. `said` gets the WAV and its length. */
export function pushToTalk(may: () => boolean, said: (sound: Blob, seconds: number) => void): Push {
  const button = part('push');
  let open: Promise<Recorder> | undefined;
  let since = 0, timer = 0;
  const start = async () => {
    const deaf = whyDeaf();
    trouble(deaf ?? '');
    if (deaf || open || !may()) return;
    since = performance.now();
    open = record(showLevel);
    button.setAttribute('aria-pressed', 'true');
    try { await open; } catch (error) { close(); trouble(whyNot(error)); return; }
    if (!open) return;
    showListening('Listening to you.');
    const began = performance.now();
    timer = setInterval(() => {
      const s = Math.floor((performance.now() - began) / 1000);
      showHeard(`${s} s`);
      if (s >= LONGEST_S) void stop();
    }, 250);
  };
  const close = () => { open = undefined; clearInterval(timer); button.setAttribute('aria-pressed', 'false'); showListening(''); };
  const stop = async () => {
    const recorder = open;
    if (!recorder) return;
    close();
    const got = await recorder.then(r => r.stop(), () => undefined);
    if (!got) return;
    const seconds = got.samples.length / got.rate;
    if (seconds < SHORTEST_S) trouble('That was too short to hold words. Hold the button while you talk, or tap it to start and again to end.');
    else if (peak(got.samples) < SILENT) trouble('The microphone gave no sound at all. Is it switched off?');
    else said(new Blob([wav(got.samples, got.rate)], { type: 'audio/wav' }), seconds);
  };
  const down = () => { if (open) void stop(); else void start(); };
  const up = () => { if (open && performance.now() - since > TAP_MS) void stop(); };
  button.addEventListener('pointerdown', e => { if (e.button === 0) { button.setPointerCapture(e.pointerId); down(); } });
  button.addEventListener('pointerup', up);
  button.addEventListener('pointercancel', up);
  // A press by Enter, Space or a screen reader comes as a click without a pointer.
  button.addEventListener('click', e => { if (e.detail === 0) down(); });
  addEventListener('keydown', e => { if (e.key === KEY) { e.preventDefault(); if (!e.repeat) down(); } });
  addEventListener('keyup', e => { if (e.key === KEY) up(); });
  return { stop, get on() { return open !== undefined; } };
}
