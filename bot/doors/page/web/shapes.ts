/** What the server sends; the same shapes as in bot/service.ts, which tests/bot/doors/page/shapes.test.ts holds. */
export interface Talk { id: number; at: string; door: string; text: string; say: string; buttons: { label: string; send: string }[]; files: string[]; struck?: boolean }
export interface Glance { title: string; say: string; lines: string[] }
export interface Progress { key: string; text: string; done?: boolean }
