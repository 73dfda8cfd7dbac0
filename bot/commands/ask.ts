import { randomUUID } from 'node:crypto';
import { readConfig } from '../config.ts';
import { BENCH, type Later, type Reply } from '../incoming.ts';
import { workOut, type WorkedOut } from '../planning/work-out.ts';
import { receiver } from '../receive.ts';
import { createService } from '../serve.ts';
import { openShop } from '../shop.ts';
import { mediaByHash, mediaPath } from '../../domain/store/media.ts';
import type { Store } from '../../domain/store/open.ts';
import { argumentsOf, command, momentSaid, UsageError } from './arguments.ts';

const USAGE = 'Use: npm run -s ask -- [--data DIR] [--at ISO] [--json] "words"';

/** One turn of the conversation, then exit. It goes through the same intake as every door, so it may run beside `npm start`. */
await command(async () => {
  const { values, positionals } = argumentsOf({ data: { type: 'string' }, at: { type: 'string' }, json: { type: 'boolean' } }, USAGE);
  if (!positionals.length) throw new UsageError(USAGE);
  const config = readConfig();
  const at = momentSaid(values.at, config.zone, USAGE);
  const { log, deps } = openShop(values.data ?? config.dataDir, config.zone, config.weather);
  const later: WorkedOut[] = [];
  const workedOut = async (task: Later, now: string): Promise<WorkedOut> => {
    // Changing the speech model is said to be for the running program only.
    if (task.kind === 'model') return { say: '', buttons: [], files: [] };
    const out = await workOut(deps, task, now); later.push(out);
    return out;
  };
  const service = createService({ deps, receiving: receiver({ store: log.store }), workOut: workedOut });
  try {
    const reply = await service.take({ key: `command:${randomUUID()}`, door: 'command', chat: BENCH, at, text: positionals.join(' ') });
    // What was handed out is waited for, so that one turn gives all of its answer.
    await service.close();
    const all = { ...reply, say: later.length ? later.map(l => l.say).join('\n') : reply.say, answers: [...reply.answers, ...later.flatMap(l => l.answer ?? [])], files: [...reply.files, ...later.flatMap(l => l.files)] };
    console.log(values.json ? JSON.stringify(shown(all)) : [all.say, ...all.files.flatMap(f => pathOf(log.store, f))].join('\n'));
  } finally {
    await service.close();
    log.store.close();
  }
});

/** Where a kept file lies. */
function pathOf(store: Store, hash: string): string[] {
  const media = mediaByHash(store, hash);
  return media ? [mediaPath(store, media)] : [];
}

/** The reply as other programs read it. */
function shown({ entries, asks, answers, warnings, question, say, note, files }: Reply) {
  return { entries: entries.map(({ id, machine, entry }) => ({ ...entry, id, ...(machine ? { machine } : {}) })), asks, answers, warnings, question, say, note, ...(files.length ? { files } : {}) };
}
