import type { Store } from './open.ts';

/**
 * What a conversation remembers between turns; kept here so that one turn in a process of its own goes on where the last one ended.
 * `open`: the question that waits for an answer; `page`: where a long list stopped; `kept`: the last sum. All but `machine` are JSON
 * values that the turn reads and checks. The table's column `undo` is no longer used: what "scratch that" strikes is told by the log.
 */
interface ChatState { machine?: string; open?: unknown; page?: unknown; kept?: unknown }

interface Row { machine: string | null; open: string | null; page: string | null; kept: string | null }
const json = (value: unknown): string | null => value === undefined ? null : JSON.stringify(value);

export function readChat(store: Store, chat: string): ChatState {
  const row = store.get<Row>('SELECT machine, open, page, kept FROM chat WHERE chat = ?', chat);
  if (!row) return {};
  const state: ChatState = {};
  if (row.machine !== null) state.machine = row.machine;
  if (row.open !== null) state.open = JSON.parse(row.open);
  if (row.page !== null) state.page = JSON.parse(row.page);
  if (row.kept !== null) state.kept = JSON.parse(row.kept);
  return state;
}

/** Writes the whole state of a chat; what is left out is forgotten. */
export function writeChat(store: Store, chat: string, state: ChatState): void {
  store.run(`INSERT INTO chat (chat, machine, open, page, kept) VALUES (?, ?, ?, ?, ?)
    ON CONFLICT (chat) DO UPDATE SET machine = excluded.machine, open = excluded.open, page = excluded.page, kept = excluded.kept`,
    chat, state.machine ?? null, json(state.open), json(state.page), json(state.kept));
}
