/** Puts an item into a list kept in the order of the log, in the place of an older form of the same entry. */
export function putById<T extends { id: number }>(list: T[], item: T): void {
  let at = list.length;
  while (at > 0 && list[at - 1]!.id >= item.id) at--;
  list.splice(at, list[at]?.id === item.id ? 1 : 0, item);
}
