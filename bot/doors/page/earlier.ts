import type { Service, Talk } from '../../service.ts';

/** The `limit` exchanges just before note `before`, oldest first. Numbers have gaps (other chats count too), so the stretch looked at grows until it holds enough. */
export function earlier(service: Service, before: number, limit: number): Talk[] {
  for (let stretch = limit; ; stretch *= 4) {
    const after = Math.max(0, before - 1 - stretch);
    const found = service.talk(after, stretch).filter(t => t.id < before);
    if (found.length >= limit || after === 0) return found.slice(-limit);
  }
}
