import type { Store } from './open.ts';

/**
 * What a conversation remembers between turns; kept here so that one turn in a process of its own goes on where the last one ended.
 * `open`: the question that waits for an answer; `page`: where a long list stopped; `undo`: entries that "scratch that" would strike;
 * `kept`: whatever else a later turn needs (the last sum, say). All but `machine` are JSON values that the turn reads and checks.
 */
interface ChatState { machine?: string; open?: unknown; page?: unknown; undo?: number[]; kept?: unknown }

interface Row { machine: string | null; open: string | null; page: string | null; undo: string | null; kept: string | null }
const json = (value: unknown): string | null => value === undefined ? null : JSON.stringify(value);

export function readChat(store: Store, chat: string): ChatState {
  const row = store.get<Row>('SELECT machine, open, page, undo, kept FROM chat WHERE chat = ?', chat);
  if (!row) return {};
  const state: ChatState = {};
  if (row.machine !== null) state.machine = row.machine;
  if (row.open !== null) state.open = JSON.parse(row.open);
  if (row.page !== null) state.page = JSON.parse(row.page);
  if (row.undo !== null) state.undo = JSON.parse(row.undo) as number[];
  if (row.kept !== null) state.kept = JSON.parse(row.kept);
  return state;
}

/** Writes the whole state of a chat; what is left out is forgotten. */
export function writeChat(store: Store, chat: string, state: ChatState): void {
  store.run(`INSERT INTO chat (chat, machine, open, page, undo, kept) VALUES (?, ?, ?, ?, ?, ?)
    ON CONFLICT (chat) DO UPDATE SET machine = excluded.machine, open = excluded.open, page = excluded.page, undo = excluded.undo, kept = excluded.kept`,
    chat, state.machine ?? null, json(state.open), json(state.page), json(state.undo), json(state.kept));
}

/** Every machine that a chat is at, so that one switched to is known before its first note. */
export const machinesOfChats = (store: Store): string[] =>
  store.all<{ machine: string }>('SELECT DISTINCT machine FROM chat WHERE machine IS NOT NULL').map(r => r.machine);
