import { part, trouble } from './dom.ts';
import { showHeard, showLevel, showListening } from './listening.ts';
import { openStream, whyDeaf, whyNot } from './microphone.ts';
import { segments } from './segments.ts';
import { wav } from './wav.ts';

const RATE = 16_000;
const FROM = '/speech/';

/** The part of the speech detector's own interface that is used here. */
interface Detector { start(): Promise<void>; destroy(): Promise<void> }
interface Options {
  model: 'v5'; baseAssetPath: string; onnxWASMBasePath: string; startOnLoad: boolean;
  getStream(): Promise<MediaStream>;
  ortConfig(ort: { env: { logLevel: string; wasm: { numThreads: number } } }): void;
  onFrameProcessed(p: { isSpeech: number }, frame: Float32Array): void;
}
declare const vad: { MicVAD: { new: (o: Options) => Promise<Detector> } };

interface HandsFree { stop(): Promise<void>; readonly on: boolean }

let loaded: Promise<void> | undefined;

/** The detector and its runtime are 16 MB of WebAssembly and weights, so they are fetched (from this server) only when first wanted. */
function load(): Promise<void> {
  const script = (name: string) => new Promise<void>((ok, no) => {
    const s = document.createElement('script');
    s.src = FROM + name;
    s.onload = () => ok();
    s.onerror = () => no(new Error(`${name} could not be loaded`));
    document.head.append(s);
  });
  loaded ??= script('ort.wasm.min.js').then(() => script('bundle.min.js'));
  loaded.catch(() => { loaded = undefined; });
  return loaded;
}

/** Hands free: listens until stopped, cuts speech from noise, and hands each piece of it over. `deaf` while the page itself is talking. */
export function handsFree(may: () => boolean, deaf: () => boolean, said: (sound: Blob, seconds: number) => void): HandsFree {
  const button = part('handsFree');
  const cut = segments(RATE);
  let detector: Promise<Detector> | undefined;
  const give = (speech: Float32Array | undefined) => { if (speech) said(new Blob([wav(speech, RATE)], { type: 'audio/wav' }), speech.length / RATE); };
  const open = async (): Promise<Detector> => {
    const stream = await openStream();
    try {
      await load();
      const d = await vad.MicVAD.new({
        model: 'v5', baseAssetPath: FROM, onnxWASMBasePath: FROM, startOnLoad: false, getStream: async () => stream,
        ortConfig(ort) { ort.env.logLevel = 'error'; ort.env.wasm.numThreads = 1; },
        onFrameProcessed({ isSpeech }, frame) {
          if (!detector) return;
          showLevel(frame);
          give(cut.frame(frame.slice(), deaf() ? 0 : isSpeech));
          showHeard(cut.speaking ? 'I hear you.' : 'Waiting for you to speak.');
        },
      });
      await d.start();
      return d;
    } catch (error) {
      for (const track of stream.getTracks()) track.stop();
      throw error;
    }
  };
  const start = async () => {
    const why = whyDeaf();
    trouble(why ?? '');
    if (why || detector || !may()) return;
    button.setAttribute('aria-pressed', 'true');
    showListening('Getting ready to listen…');
    const opening = detector = open();
    try {
      await opening;
      if (detector === opening) showListening('Listening, hands free.');
    } catch (error) {
      if (detector === opening) close();
      trouble(whyNot(error));
    }
  };
  const close = () => { detector = undefined; button.setAttribute('aria-pressed', 'false'); showListening(''); };
  const stop = async () => {
    const was = detector;
    if (!was) return;
    close();
    give(cut.end());
    await was.then(d => d.destroy(), () => {});
  };
  button.addEventListener('click', () => { void (detector ? stop() : start()); });
  return { stop, get on() { return detector !== undefined; } };
}
