import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { tasksInHand } from '../../../bot/planning/in-hand.ts';
import type { Task } from '../../../bot/planning/task.ts';
import { workOut } from '../../../bot/planning/work-out.ts';
import { BENCH } from '../../../bot/incoming.ts';
import { receiver } from '../../../bot/receive.ts';
import { createService, type Words } from '../../../bot/serve.ts';
import type { Talk } from '../../../bot/service.ts';
import type { Deps } from '../../../bot/turn/deps.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-02T10:00:00+02:00';
let shop = shopInMemory();
beforeEach(() => { shop = shopInMemory(); for (const w of ['switch to Heron', 'two hours every evening', 'hood is off', 'paint the hood']) shop.say(w, AT); });
afterEach(() => shop.close());

/** A program on the shop's log, as a start makes it. */
function program(work: (task: Task, at: string) => Promise<Words>, doors: readonly string[] = []) {
  const deps: Deps = { ...shop.deps, handsOut: ask => ask.kind === 'finish' };
  const service = createService({ deps, receiving: receiver({ store: deps.log.store }), workOut: (task, at) => work(task as Task, at), outboxDoors: doors });
  const heard: Talk[] = [];
  service.onTalk(t => heard.push(t));
  return { service, said: () => heard.filter(t => t.text === '').map(t => t.say) };
}
const never = (): Promise<Words> => new Promise(() => {});
const properly = (task: Task, at: string): Promise<Words> => workOut(shop.deps, task, at);
const store = () => shop.deps.log.store;

describe('a task in hand', () => {
  it.each(['when will the machine be done?', 'what if it rains all week'])('"%s": is answered after the next start when the program was cut off, once', async words => {
    const cutOff = program(never);
    const reply = await cutOff.service.take({ key: 'a', door: 'terminal', chat: BENCH, at: AT, text: words });
    expect(reply.say).toBe('Working it out…');
    expect(tasksInHand(store())).toHaveLength(1);
    const next = program(properly);
    next.service.resume();
    await next.service.close();
    expect(next.said()).toEqual([expect.stringMatching(/as likely as not/)]);
    expect(next.service.talk(undefined, 10).find(t => t.id === reply.note)!.say).toContain('as likely as not');
    expect(tasksInHand(store())).toEqual([]);
    const third = program(properly);
    third.service.resume();
    await third.service.close();
    expect(third.said()).toEqual([]);
  });

  it('is answered by one of two programs, and by the way it came', async () => {
    const cutOff = program(never, ['telegram']);
    void cutOff.service.take({ key: 'a', door: 'telegram', chat: BENCH, at: AT, text: 'when will the machine be done?', target: '7' });
    while (!tasksInHand(store()).length) await new Promise(r => setTimeout(r, 5));
    const [one, other] = [program(properly, ['telegram']), program(properly, ['telegram'])];
    one.service.resume();
    other.service.resume();
    await Promise.all([one.service.close(), other.service.close()]);
    expect([...one.said(), ...other.said()]).toHaveLength(1);
    expect(store().all<{ key: string }>(`SELECT key FROM outbox WHERE key LIKE '%later%'`)).toHaveLength(1);
  });

  it('leaves nothing behind when it was worked out', async () => {
    const { service, said } = program(properly);
    await service.take({ key: 'a', door: 'terminal', chat: BENCH, at: AT, text: 'when will the machine be done?' });
    await service.close();
    expect(said()).toHaveLength(1);
    expect(tasksInHand(store())).toEqual([]);
  });
});
