import type { InlineKeyboardMarkup } from 'grammy/types';
import type { Store } from '../../../domain/store/open.ts';
import type { Button } from '../../incoming.ts';
import { addressOf } from './moved.ts';
import { sentInRow } from './rows.ts';

/** Labels up to this length stand two in a row. */
const SHORT = 16;

/**
 * What a button carries is 64 bytes at most, so it names the row of the outbox it went out with and its place there; the words lie in
 * that row, and so outlive a restart.
 */
export function keyboardOf(buttons: readonly Button[], row: number): InlineKeyboardMarkup | undefined {
  if (!buttons.length) return undefined;
  const rows: { text: string; callback_data: string }[][] = [];
  buttons.forEach(({ label }, i) => {
    const last = rows.at(-1);
    const button = { text: label, callback_data: `${row}.${i}` };
    if (last?.length === 1 && [last[0]!.text, label].every(l => l.length <= SHORT)) last.push(button);
    else rows.push([button]);
  });
  return { inline_keyboard: rows };
}

/** The words that a tap stands for; undefined when its message did not go out to that chat. */
export function wordsBehind(store: Store, data: string | undefined, chat: number): string | undefined {
  const [, row, i] = /^(\d{1,15})\.(\d{1,3})$/.exec(data ?? '') ?? [];
  if (row === undefined) return undefined;
  const sent = sentInRow(store, Number(row));
  return sent && addressOf(store, Number(sent.target)) === chat ? sent.buttons[Number(i)]?.send : undefined;
}
