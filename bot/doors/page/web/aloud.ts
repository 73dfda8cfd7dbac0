/** Reading replies aloud, by the browser's own voices. Off until asked for. */
interface Aloud { on: boolean; say(text: string): void; hush(): void; speaking(): boolean }

/** Why it can't be done here; undefined when it can. */
export const noVoice = (): string | undefined => ('speechSynthesis' in window ? undefined : 'This browser has no voice to read aloud with.');

export function aloud(): Aloud {
  const voice = window.speechSynthesis as SpeechSynthesis | undefined;
  return {
    on: false,
    say(text) {
      if (!this.on || !voice) return;
      // A voice would name the marks of a list.
      const u = new SpeechSynthesisUtterance(text.replace(/[•…]/g, ' '));
      u.lang = 'en';
      voice.speak(u);
    },
    hush() { voice?.cancel(); },
    speaking: () => voice?.speaking ?? false,
  };
}
