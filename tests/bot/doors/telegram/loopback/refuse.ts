/** What a call of the Bot API comes back with. */
export type Answer =
  | { ok: true; result: unknown }
  | { ok: false; error_code: number; description: string; parameters?: { retry_after?: number; migrate_to_chat_id?: number } };

export const refuse = (error_code: number, description: string, parameters?: { retry_after?: number; migrate_to_chat_id?: number }): Answer =>
  ({ ok: false, error_code, description, ...(parameters ? { parameters } : {}) });
export const done = (result: unknown = true): Answer => ({ ok: true, result });
