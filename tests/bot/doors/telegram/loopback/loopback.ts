import type { Chat, Message, Update, User } from 'grammy/types';
import { Cloud, person, type CloudFile, type SentMessage } from './cloud.ts';
import { Faults, type Fault } from './faults.ts';
import { Polling } from './polling.ts';
import { listen, type Wire } from './server.ts';

/** How a message comes: where to, from whom, and whatever else the platform puts beside it. */
interface How { chat?: number; from?: User; extra?: Partial<Message>; date?: number }
interface FileHow extends How { caption?: string; says?: number; path?: string; mime?: string }

export interface Loopback {
  url: string; token: string; botId: number; cloud: Cloud;
  /** A person (by number, in the private chat unless `chat` says otherwise) sends words; gives the message's number. */
  sendText(user: number, text: string, how?: How): number;
  sendPhoto(user: number, bytes: Uint8Array, how?: FileHow): number;
  sendVoice(user: number, bytes: Uint8Array, how?: FileHow): number;
  /** Any message by its own fields. */
  send(user: number, fields: Partial<Message>, how?: How): number;
  edit(user: number, message: number, text: string, how?: How): void;
  /** Taps a button by its label or its data; gives the number of the press. */
  press(user: number, message: SentMessage, button: string): string;
  addToGroup(user: number, chat: number): void;
  group(chat: number, title: string, type?: 'group' | 'supergroup'): void;
  update(body: Omit<Update, 'update_id'>): void;
  /** Hands every update of so far out again, as after a poller that died before it confirmed. */
  repeatAll(): void;
  sent(): SentMessage[];
  /** Resolves once that many messages are sent in all (or `test` holds of them); rejects after `ms`. */
  waitSent(want: number | ((sent: SentMessage[]) => boolean), ms?: number): Promise<SentMessage[]>;
  fault(method: string, kind: Fault['kind'], times?: number, where?: string): void;
  clearFaults(): void;
  calls(method: string): { method: string; at: number }[];
  downloads(): string[];
  /** Updates that no poller has confirmed. */
  unconfirmed(): Update[];
  /** Lets the platform's clock run ahead. */
  advance(seconds: number): void;
  /** Takes the server off the net and puts it back at the same address. */
  down(): Promise<void>;
  up(): Promise<void>;
  close(): Promise<void>;
}

/** A Bot API of our own on 127.0.0.1 with the semantics that matter to a poller; `botApi` of another server is not needed. */
export async function startLoopback(): Promise<Loopback> {
  const cloud = new Cloud();
  const wire: Wire = { cloud, polling: new Polling(cloud), faults: new Faults(), calls: [], downloads: [] };
  let { server, url } = await listen(wire);
  const down = async () => { server.closeAllConnections(); await new Promise(shut => server.close(shut)); };
  const sendFile = (kind: 'photo' | 'voice') => (user: number, bytes: Uint8Array, how: FileHow = {}) => {
    const file = addFile(cloud, bytes, how);
    const fields = kind === 'photo' ? { photo: [{ ...file, file_id: `${file.file_id}s`, file_size: 10, width: 90, height: 90 }, { ...file, width: 1280, height: 960 }] }
      : { voice: { ...file, duration: 2, mime_type: how.mime ?? 'audio/ogg' } };
    return say(cloud, user, { ...fields, ...(how.caption === undefined ? {} : { caption: how.caption }) } as Partial<Message>, how);
  };
  return {
    url, token: cloud.token, botId: cloud.bot.id, cloud,
    sendText: (user, text, how) => say(cloud, user, { text } as Partial<Message>, how),
    sendPhoto: sendFile('photo'),
    sendVoice: sendFile('voice'),
    send: (user, fields, how) => say(cloud, user, fields, how),
    edit(user, id, text, how = {}) {
      const old = cloud.message(how.chat ?? user, id)!;
      const field = old.text === undefined ? 'caption' : 'text';
      const edited = cloud.keep({ ...old, [field]: text, edit_date: how.date ?? cloud.now() } as Message);
      cloud.push({ edited_message: edited } as Omit<Update, 'update_id'>);
    },
    press(user, message, button) {
      const found = message.buttons.find(b => b.text === button || b.data === button);
      const kept = cloud.message(message.chat, message.id)!;
      return cloud.press({ from: person(user), chat_instance: '1', message: kept as never, data: found?.data ?? button });
    },
    group: (chat, title, type = 'supergroup') => { cloud.chats.set(chat, { id: chat, type, title } as Chat); },
    addToGroup(user, chat) {
      const member = (status: string) => ({ user: cloud.bot, status });
      cloud.push({ my_chat_member: { chat: cloud.chats.get(chat), from: person(user), date: cloud.now(), old_chat_member: member('left'), new_chat_member: member('member') } } as never);
    },
    update: body => { cloud.push(body); },
    repeatAll: () => { for (const update of [...cloud.past].reverse()) cloud.repeat(update); },
    sent: () => cloud.sent,
    waitSent: (want, ms = 8_000) => until(() => cloud.sent, typeof want === 'number' ? s => s.length >= want : want, ms),
    fault: (method, kind, times = 1, where) => wire.faults.add({ method, kind, times, where }),
    clearFaults: () => wire.faults.clear(),
    calls: method => wire.calls.filter(c => c.method === method),
    downloads: () => wire.downloads,
    unconfirmed: () => cloud.queue.map(q => q.update),
    advance: seconds => { cloud.ahead += seconds; },
    down,
    up: async () => { ({ server } = await listen(wire, Number(new URL(url).port))); },
    async close() { wire.polling.gone(); await down(); },
  };
}

function say(cloud: Cloud, user: number, fields: Partial<Message>, how: How = {}): number {
  const id = how.chat ?? user;
  if (id === user) cloud.chats.set(user, { id: user, type: 'private', first_name: `Person ${user}` });
  const chat = cloud.chats.get(id)!;
  const message = { message_id: cloud.nextMessageId(id), date: how.date ?? cloud.now(), chat, from: how.from ?? person(user), ...fields, ...how.extra } as Message;
  cloud.push({ message: cloud.keep(message) } as Omit<Update, 'update_id'>);
  return message.message_id;
}

let files = 0;
function addFile(cloud: Cloud, bytes: Uint8Array, how: FileHow) {
  const id = `file-${++files}`;
  const file: CloudFile = { bytes, path: how.path ?? `files/${id}`, ...('says' in how ? (how.says === undefined ? {} : { says: how.says }) : { says: bytes.length }) };
  cloud.files.set(id, file);
  return { file_id: id, file_unique_id: `u${id}`, ...(file.says === undefined ? {} : { file_size: file.says }) };
}

/** Looks again every few ms until it holds; a test that waits for what never comes fails with what there was. */
export async function until<T>(look: () => T, holds: (value: T) => boolean, ms = 8_000): Promise<T> {
  const end = Date.now() + ms;
  while (!holds(look())) {
    if (Date.now() > end) throw new Error(`waited ${ms} ms in vain; there was ${JSON.stringify(look(), (_, v) => (v instanceof Uint8Array ? `${v.length} bytes` : v as unknown))?.slice(0, 2000)}`);
    await new Promise(next => setTimeout(next, 10));
  }
  return look();
}
