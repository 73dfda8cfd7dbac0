import type { Message } from 'grammy/types';

/**
 * The words of a message as meant for the shop. In a group a message must often begin with the bot's name or a stroke to reach it at
 * all; both are the address and not the note. Names of bots end in "bot", by the platform's rule.
 */
export function wordsOf(m: Message): string {
  const words = m.text ?? m.caption ?? '';
  const first = (m.entities ?? m.caption_entities ?? []).find(e => e.offset === 0);
  if (first?.type === 'mention' && /bot$/i.test(words.slice(0, first.length))) return words.slice(first.length).replace(/^[\s,:]+/, '');
  if (first?.type !== 'bot_command') return words;
  const command = words.slice(1, first.length).replace(/@.*$/, '').replaceAll('_', ' ');
  return `${command}${words.slice(first.length)}`;
}

/** The greeting that the platform's own "start" button sends. */
export const isStart = (m: Message): boolean => /^\/start(@\w+)?\s*$/.test(m.text ?? '');
