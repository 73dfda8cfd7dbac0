import { BENCH } from '../../incoming.ts';
import { readSetting, writeSetting } from '../../../domain/store/settings.ts';
import type { Store } from '../../../domain/store/open.ts';
import type { Chat } from 'grammy/types';

/** A group that grows gets another number at the platform; it stays the same conversation here. */
const to = (chat: number) => `telegram moved ${chat}`;
const from = (chat: number) => `telegram was ${chat}`;

export function noteMove(store: Store, old: number, now: number): void {
  store.transaction(() => {
    writeSetting(store, to(old), String(now));
    writeSetting(store, from(now), readSetting(store, from(old)) ?? String(old));
  });
}

/** The number that a chat has today. */
export const addressOf = (store: Store, chat: number): number => Number(readSetting(store, to(chat)) ?? chat);

/** The conversation a chat belongs to: what a paired person says in private is the same talk as at the bench; a group is its own. */
export const conversationOf = (store: Store, chat: Chat): string =>
  (chat.type === 'private' ? BENCH : `tg:${readSetting(store, from(chat.id)) ?? chat.id}`);
