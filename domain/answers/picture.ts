import type { PictureAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Shop } from '../log/shop.ts';
import type { More } from './answer.ts';
import { covered, lookUp } from './find.ts';

/** The files of photos kept of a part and of what belongs to it, oldest first. */
export function picture(shop: Shop, ask: AskOf<'picture'>, more: More): PictureAnswer {
  const found = ask.part === undefined ? undefined : lookUp(shop, ask.part, more.machine);
  const files = found ? covered(found).flatMap(t => more.past.filesOf(found.machine.key, t.key)) : [];
  return { kind: 'picture', part: ask.part ?? '', files: [...new Set(files)] };
}
