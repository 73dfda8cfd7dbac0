import { joined } from './wav.ts';

const RATE = 16_000;
const NO_MICROPHONE = new Map([
  ['NotAllowedError', 'The browser may not use the microphone. Allow it beside the address, then try again.'],
  ['NotFoundError', 'This computer has no microphone that the browser can find.'],
  ['NotReadableError', 'The microphone is held by another program.'],
]);

/** Why there can be no microphone on this page at all; undefined when there can. Browsers give it only to a page they hold to be safe from eavesdroppers. */
export function whyDeaf(): string | undefined {
  if (navigator.mediaDevices !== undefined && typeof AudioWorkletNode === 'function') return undefined;
  return window.isSecureContext ? 'This browser has no way to the microphone.'
    : `The microphone works only on this computer itself: open this page as http://127.0.0.1:${location.port} there. Over plain http at another address the browser withholds it.`;
}

export const whyNot = (error: unknown): string => NO_MICROPHONE.get((error as Error)?.name) ?? 'The microphone could not be opened.';

export const openStream = (): Promise<MediaStream> =>
  navigator.mediaDevices.getUserMedia({ audio: { channelCount: 1, echoCancellation: true, noiseSuppression: true, autoGainControl: true } });

export interface Recorder { stop(): Promise<{ samples: Float32Array; rate: number }> }

/** Records one channel until it is stopped. `heard` gets each stretch of samples as it comes. Rejects when the microphone can't be opened. */
export async function record(heard: (samples: Float32Array) => void): Promise<Recorder> {
  const stream = await openStream();
  const { context, source } = input(stream);
  try { await context.audioWorklet.addModule('/code/microphone-worklet.js'); } catch (error) { release(stream, context); throw error; }
  const node = new AudioWorkletNode(context, 'microphone', { numberOfOutputs: 0 });
  const pieces: Float32Array[] = [];
  const flushed = new Promise<void>(done => {
    node.port.onmessage = ({ data }: MessageEvent<Float32Array | 'end'>) => { if (data === 'end') done(); else { pieces.push(data); heard(data); } };
  });
  source.connect(node);
  await context.resume();
  return {
    async stop() {
      node.port.postMessage('end');
      await flushed;
      const rate = context.sampleRate;
      release(stream, context);
      return { samples: joined(pieces), rate };
    },
  };
}

/** At the rate the recogniser wants, where the browser can change rates on the way in; else at the microphone's own, which the server changes. */
function input(stream: MediaStream): { context: AudioContext; source: MediaStreamAudioSourceNode } {
  let context = new AudioContext({ sampleRate: RATE });
  try { return { context, source: context.createMediaStreamSource(stream) }; } catch { void context.close(); }
  context = new AudioContext();
  return { context, source: context.createMediaStreamSource(stream) };
}

function release(stream: MediaStream, context: AudioContext): void {
  for (const track of stream.getTracks()) track.stop();
  void context.close();
}
