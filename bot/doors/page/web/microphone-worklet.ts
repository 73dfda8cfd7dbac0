/** Runs beside the sound card: gathers what the microphone gives and hands it to the page, until it is told to end. */
declare class AudioWorkletProcessor { readonly port: MessagePort }
declare function registerProcessor(name: string, make: new () => AudioWorkletProcessor): void;

const CHUNK = 2048;

class Microphone extends AudioWorkletProcessor {
  #chunk = new Float32Array(CHUNK);
  #filled = 0;
  #ended = false;

  constructor() {
    super();
    this.port.onmessage = () => { this.#send(); this.#ended = true; this.port.postMessage('end'); };
  }

  process(inputs: Float32Array[][]): boolean {
    for (const s of inputs[0]?.[0] ?? []) {
      this.#chunk[this.#filled++] = s;
      if (this.#filled === CHUNK) this.#send();
    }
    return !this.#ended;
  }

  #send(): void {
    if (this.#filled) this.port.postMessage(this.#chunk.slice(0, this.#filled));
    this.#filled = 0;
  }
}

registerProcessor('microphone', Microphone);
