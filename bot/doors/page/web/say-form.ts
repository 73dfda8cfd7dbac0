import { part, trouble } from './dom.ts';

const LARGEST_PHOTO = 20 * 1024 * 1024;

interface SayForm { /** Puts words into the box, to be changed and sent. */ fill(text: string): void }

/** Where notes are typed and photos picked. `say` and `photo` get what is to be sent; a photo takes the words in the box along. */
export function sayForm(say: (text: string) => void, photo: (file: File, caption: string) => void): SayForm {
  const words = part<HTMLTextAreaElement>('words');
  const picked = part<HTMLInputElement>('picked');
  const fill = (text: string) => {
    words.value = text;
    // The box grows with what is in it.
    words.style.height = 'auto';
    words.style.height = `${words.scrollHeight + words.offsetHeight - words.clientHeight}px`;
  };
  const send = () => {
    const text = words.value;
    words.focus();
    if (!text.trim()) return;
    trouble('');
    fill('');
    say(text);
  };
  const sendPhoto = (file: File | undefined) => {
    if (!file) return;
    if (file.size > LARGEST_PHOTO) { trouble('That photo is larger than 20 MB, the most that one note can hold.'); return; }
    trouble('');
    photo(file, words.value);
    fill('');
  };
  part('say').addEventListener('submit', e => { e.preventDefault(); send(); });
  words.addEventListener('input', () => fill(words.value));
  words.addEventListener('keydown', e => { if (e.key === 'Enter' && !e.shiftKey && !e.isComposing) { e.preventDefault(); send(); } });
  words.addEventListener('paste', e => {
    const file = e.clipboardData?.files[0];
    if (file?.type.startsWith('image/')) { e.preventDefault(); sendPhoto(file); }
  });
  part('photo').addEventListener('click', () => picked.click());
  picked.addEventListener('change', () => { sendPhoto(picked.files?.[0]); picked.value = ''; });
  return { fill(text) { fill(text); words.focus(); } };
}
