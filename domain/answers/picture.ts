import type { PictureAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { nameKey } from '../model/names.ts';
import type { Shop } from '../log/shop.ts';
import type { More } from './given.ts';
import { covered, lookUp } from './find.ts';

/** The files of photos kept of a part and of what belongs to it, oldest first; a part known only by a caption has its photos too. */
export function picture(shop: Shop, ask: AskOf<'picture'>, more: More): PictureAnswer {
  const part = ask.part ?? '';
  const found = part ? lookUp(shop, part, more.machine) : undefined;
  const here = more.machine === undefined ? '' : nameKey(more.machine);
  const files = [
    ...(found ? covered(found).flatMap(t => more.past.filesOf(found.machine.key, t.key)) : []),
    ...(part ? more.past.filesOf(here, nameKey(part)) : []),
  ];
  return { kind: 'picture', part, files: [...new Set(files)] };
}
