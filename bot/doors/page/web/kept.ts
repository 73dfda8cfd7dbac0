import { make } from './dom.ts';

/** A kept file: shown when it is a picture, played when it is sound, else a link to it. */
export function keptFile(name: string): HTMLElement {
  const at = `/kept/${encodeURIComponent(name)}`;
  const link = make('a', '', picture(at, () => link.replaceWith(sound(at))));
  link.href = at;
  link.target = '_blank';
  link.rel = 'noopener';
  return link;
}

function picture(at: string, isNone: () => void): HTMLElement {
  const img = make('img', '');
  img.alt = 'Kept photo';
  img.loading = 'lazy';
  img.addEventListener('error', isNone);
  img.src = at;
  return img;
}

function sound(at: string): HTMLElement {
  const audio = make('audio', '');
  audio.controls = true;
  audio.preload = 'none';
  audio.src = at;
  audio.setAttribute('aria-label', 'Kept sound');
  return audio;
}
