import { GrammyError, InputFile } from 'grammy';
import { isPaired } from '../../../domain/store/people.ts';
import { backOff, type Queued } from '../../../domain/store/queue.ts';
import type { Store } from '../../../domain/store/open.ts';
import { SendLater, SendNever, type Outgoing } from '../../outbox.ts';
import { keyboardOf } from './buttons.ts';
import { inWords } from './errors.ts';
import type { Line } from './line.ts';
import { addressOf, noteMove } from './moved.ts';
import { splitText } from './split.ts';
import { DOOR } from './who.ts';

/** `media`: where the kept file of a hash name lies; undefined when there is none. */
interface Deps { store: Store; line: Line; media: (hash: string) => string | undefined }
type Step = (chat: number) => Promise<unknown>;

/** An album holds 2 to 10. */
const ALBUM = 10;
/** When the platform can't be reached, replies wait for it and are tried again at least so often, in ms. */
const LONGEST_WAIT_MS = 60_000;

/**
 * The sender for the outbox of this door. Plain text, so that nothing in a note is taken for markup. A reply of several messages goes on
 * where it was held up; only a fault between a message and its answer sends one twice.
 * @throws SendLater when told to wait or out of reach, SendNever when it can't be delivered.
 */
export function sendTelegram(deps: Deps): (o: Outgoing, row: Queued) => Promise<void> {
  const sent = new Map<number, number>();
  return async (o, row) => {
    let chat = addressOf(deps.store, Number(o.target));
    const steps = stepsOf(deps, o, row.seq);
    for (let i = sent.get(row.seq) ?? 0; i < steps.length; i++) {
      // A private chat bears the number of its person.
      if (chat > 0 && !isPaired(deps.store, DOOR, chat)) throw new SendNever('that person is not paired any more');
      try { await steps[i]!(chat); } catch (error) {
        const moved = error instanceof GrammyError ? error.parameters.migrate_to_chat_id : undefined;
        if (moved === undefined) throw asOutbox(error, row);
        noteMove(deps.store, chat, moved);
        chat = moved;
        i--;
        continue;
      }
      sent.set(row.seq, i + 1);
    }
    sent.delete(row.seq);
  };
}

function stepsOf({ line: { api }, media }: Deps, o: Outgoing, row: number): Step[] {
  const texts = splitText(o.say);
  const steps: Step[] = texts.map((text, i) => chat =>
    api.sendMessage(chat, text, { reply_markup: i === texts.length - 1 ? keyboardOf(o.buttons, row) : undefined, link_preview_options: { is_disabled: true } }));
  const paths = o.files.flatMap(f => media(f) ?? []);
  const pictures = paths.filter(p => /\.(jpe?g|png|webp)$/i.test(p));
  for (let i = 0; i < pictures.length; i += ALBUM) steps.push(pictureStep(api, pictures.slice(i, i + ALBUM)));
  for (const path of paths.filter(p => !pictures.includes(p))) steps.push(chat => api.sendDocument(chat, new InputFile(path)));
  return steps;
}

/** Pictures go as an album; what the platform won't take as a picture (too large, too long) goes as files. */
const pictureStep = (api: Line['api'], paths: string[]): Step => async chat => {
  try {
    if (paths.length === 1) await api.sendPhoto(chat, new InputFile(paths[0]!));
    else await api.sendMediaGroup(chat, paths.map(path => ({ type: 'photo' as const, media: new InputFile(path) })));
  } catch (error) {
    if (!(error instanceof GrammyError) || !/PHOTO|IMAGE|too large|too big/i.test(error.description)) throw error;
    for (const path of paths) await api.sendDocument(chat, new InputFile(path));
  }
};

/** 400 and 403 won't change by asking again; a limit says when; all else is the way there, which comes back some time. */
function asOutbox(error: unknown, row: Queued): Error {
  if (!(error instanceof GrammyError)) return new SendLater(Math.min(LONGEST_WAIT_MS, backOff(row.tries + 1)));
  if (error.error_code === 429) return new SendLater((error.parameters.retry_after ?? 3) * 1000);
  if (error.error_code === 400 || error.error_code === 403) return new SendNever(inWords(error));
  return new SendLater(Math.min(LONGEST_WAIT_MS, backOff(row.tries + 1)));
}
