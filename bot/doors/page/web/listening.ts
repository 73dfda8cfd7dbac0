import { part } from './dom.ts';
import { peak } from './wav.ts';

const TITLE = document.title;

/** The bar that says plainly that the microphone is open, and how loud it is there. An empty `what` takes it away. */
export function showListening(what: string): void {
  part('listening').hidden = !what;
  part('listeningTo').textContent = what;
  part('told').textContent = what || 'Not listening any more.';
  part('heard').textContent = '';
  part<HTMLMeterElement>('level').value = 0;
  document.title = what ? `● Listening: ${TITLE}` : TITLE;
}

export const showHeard = (text: string): void => { part('heard').textContent = text; };

/** Loudness on a scale where talk at the bench fills about half of it (the square root spreads the quiet end). */
export const showLevel = (samples: Float32Array): void => { part<HTMLMeterElement>('level').value = Math.sqrt(peak(samples)); };
