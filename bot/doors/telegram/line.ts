import { inspect } from 'node:util';
import { Api, Bot, type ApiClientOptions, type RawApi, type Transformer } from 'grammy';
import type { UserFromGetMe } from 'grammy/types';
import { DateTime } from 'luxon';
import { cleaned, redactor } from './errors.ts';

/** `api`: the root of a Bot API server of one's own. `zone`: IANA name of the shop's time zone. */
interface LineConfig { token: string; api?: string; zone: string }

/** How long one call may take, in s. A poll takes 30 s at most, so a connection that is silently dead is noticed in time. */
const CALL_SECONDS = 90;

/** The one line to the Bot API. The token stays inside: no error that is thrown carries it, and the line itself shows nothing when printed. */
export interface Line {
  /** The bot's number, the first half of its token. */
  botId: string;
  api: Api;
  redact: (words: string) => string;
  /** Who the bot is; asked once. */
  me(): Promise<UserFromGetMe>;
  /** A new poller; it starts with what is not yet confirmed. */
  poller(me: UserFromGetMe): Bot;
  /** Where a file that getFile named is to be had. */
  fileUrl(path: string): string;
  /** Seconds since 1970, as the platform gives them, as ISO with the offset of the shop. */
  moment(seconds: number): string;
}

export function telegramLine({ token, api, zone }: LineConfig, callSeconds = CALL_SECONDS): Line {
  const root = (api ?? 'https://api.telegram.org').replace(/\/+$/, '');
  const redact = redactor(token);
  const client: ApiClientOptions = { apiRoot: root, timeoutSeconds: callSeconds };
  const tokenless: Transformer<RawApi> = async (call, method, payload, signal) => {
    try { return await call(method, payload, signal); } catch (error) { throw cleaned(error, redact); }
  };
  const line = new Api(token, client);
  line.config.use(tokenless);
  let known: UserFromGetMe | undefined;
  const made: Line = {
    botId: token.split(':')[0]!,
    api: line,
    redact,
    me: async () => (known ??= await line.getMe()),
    poller(me) {
      const bot = new Bot(token, { botInfo: me, client });
      bot.api.config.use(tokenless);
      return bot;
    },
    fileUrl: path => `${root}/file/bot${token}/${safePath(path)}`,
    moment: seconds => DateTime.fromSeconds(seconds, { zone }).toISO({ suppressMilliseconds: true })!,
  };
  const shown = () => `the line of bot ${made.botId}`;
  return Object.defineProperties(made, { toJSON: { value: shown }, [inspect.custom]: { value: shown } });
}

/** A path with dot steps or from the root is sent as one name, so that it can't leave the folder of the bot at the server. */
function safePath(path: string): string {
  const steps = path.split('/');
  return steps.some(s => s === '' || s === '.' || s === '..') ? encodeURIComponent(path) : steps.map(encodeURIComponent).join('/');
}
