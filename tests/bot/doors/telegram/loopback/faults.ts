import type { ServerResponse } from 'node:http';
import { refuse } from './refuse.ts';

/** A thing that goes wrong with a call, `times` times. `method` '*' is any; 'file' is a download. */
export interface Fault {
  method: string;
  kind:
    /** Too many requests, with how long to wait; on any method (Bot API, ResponseParameters.retry_after). */
    | { retryAfter: number }
    /** The connection breaks before the call had its effect, or after. */
    | 'reset-before' | 'reset-after'
    /** An answer that is not the platform's own, as of a gateway in between. */
    | 'gateway'
    /** Never answered. */
    | 'hang'
    /** Half of the file, then the connection ends. */
    | 'cut';
  times: number;
  /** Only calls that hold these words. */
  where?: string;
}

export class Faults {
  readonly #list: Fault[] = [];
  add(fault: Fault): void { this.#list.push(fault); }
  clear(): void { this.#list.length = 0; }
  take(method: string, words: string): Fault | undefined {
    const found = this.#list.find(f => f.times > 0 && (f.method === '*' || f.method === method) && (!f.where || words.includes(f.where)));
    if (found) found.times--;
    return found;
  }
}

/** Lets the call fail before it does anything; false: it goes on (and may break afterwards). */
export function failBefore(fault: Fault | undefined, res: ServerResponse): boolean {
  if (!fault || fault.kind === 'reset-after' || fault.kind === 'cut') return false;
  if (fault.kind === 'reset-before') res.socket?.destroy();
  else if (fault.kind === 'gateway') res.writeHead(502, { 'content-type': 'text/html' }).end('<html>Bad Gateway</html>');
  else if (fault.kind !== 'hang') {
    const seconds = fault.kind.retryAfter;
    res.writeHead(429, { 'content-type': 'application/json' }).end(JSON.stringify(refuse(429, `Too Many Requests: retry after ${seconds}`, { retry_after: seconds })));
  }
  return true;
}
