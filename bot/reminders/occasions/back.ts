import { allThings, keyOf, type Look, type Occasion } from '../occasion.ts';

/** A part that is out for work and due back today, or was. */
export const back: Look = ({ shop, today }) => allThings(shop).flatMap(({ machine, thing, name }): Occasion[] => {
  const { out } = thing;
  if (out?.until === undefined || out.until > today) return [];
  const key = keyOf('back', machine, thing, out.id);
  return [{ topic: 'back', key, stop: key, part: name, until: out.until, ...(out.where ? { where: out.where } : {}), ...(out.do ? { do: out.do } : {}) }];
});
