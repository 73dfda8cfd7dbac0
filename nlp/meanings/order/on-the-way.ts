import { dims, type Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { isMachine, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { goodsIn, isSeller, type Goods } from '../lib/goods.ts';
import { sourceIn } from '../lib/fields.ts';
import { sourceSubject } from '../lib/source.ts';
import { lowText, type Telling } from '../telling.ts';

const WAY = String.raw`on (?:its|their|the|his|her) way(?! (?:back|out|home|to))|in the (?:post|mail)(?! to)|in transit|en route|headed (?:this way|here|my way|our way|for me|for here)|being (?:made(?: up)?|cast|shipped|posted|sent out|sent over|couriered)|(?:been |just )?(?:dispatched|despatched|posted|shipped)(?: out)?(?: (?:today|yesterday|this morning|on \w+day))?$`;
/** "is on its way", "should be here Friday", "is due in Thursday": said of a thing, the order is out and the thing is not here. */
const COMES = new RegExp(String.raw`\b(?:is|are|'s|'re|was|were|has|have) (?:still |now |all |just |finally |already |both )*(?:${WAY}|coming (?:up |down |out |over )?from the (?:\S+ )?(?:factors?|dealers?|makers?|suppliers?|mill|works|foundry|shop|store|depot))`);
const EXPECTED = /\b(should|ought to|will|'ll|supposed to|meant to) (?:all |both |finally |hopefully )*(be (here|with me|with us)|turn up|arrive|land)\b|\bdue (in|here|to (arrive|land|be here|turn up))\b/;
/** What is had without being here: "I've a set of rings coming", "there's a belt on its way", "got a kit headed this way". */
const HAD = new RegExp(String.raw`^(?:coming(?: over)?(?= from\b)|coming(?: up| down| out)(?= from the\b)|coming(?= (?:from|by|next|this|tomorrow|on (?:the )?\w+day|\w+day)\b)|coming(?= in (?:the (?:post|mail)|a |on |\w+day)| on the |$)|${WAY}|on (?:back ?)?order)`);

/** What a clause says is under way to the shop; undefined when it says nothing of the kind. */
export function onTheWay(t: Telling): Goods[] | undefined {
  const c = t.clause, text = lowText(t, c);
  if (/\b(back|home|off to|away to)\b/.test(text) || /^(he|she|person)$/.test(c.who ?? '')) return undefined;
  const own = c.subj.filter(s => (!s.carried || c.who === 'it' || c.who === 'they') && isGoods(t, s.name));
  if (own.length && !/^(i|we)$/.test(c.who ?? '') && (COMES.test(text) || verblessWay(c) || EXPECTED.test(text) && dims(c.items, 'when').length > 0 && !own.some(s => s.carried))) return outOnWork(t, own[0]!.name) ? undefined : asGoods(own);
  const k = /^(get|have)$/.test(c.verb?.base ?? (c.pred === 'have' ? 'have' : '')) && (c.verb?.form !== 'base' || c.verb.low === 'got') || /^there$/.test(c.items[0]?.low ?? '') && c.pred === 'be' ? c.items.findIndex((i, n) => n > 0 && i.np !== undefined && HAD.test(rest(c, n + 1))) : -1;
  if (k < 0 || c.neg) return undefined;
  const from = c.items.findIndex((i, n) => n > c.vi && (i.np !== undefined || i.f?.dim === 'number'));
  const goods = goodsIn(t, c.items.slice(0, k + 1), from).filter(g => isGoods(t, g.item));
  return goods.length ? goods : undefined;
}

const rest = (c: Clause, n: number): string => c.items.slice(n).filter(i => i.t !== 'mark').map(i => i.low).join(' ');
const isGoods = (t: Telling, name: string): boolean => partLike(t.sheet, name) && !isMachine(t.sheet, name) && !isSeller(name) || isStuff(name);
/** "gasket set in the post", "rings on their way from Ohio": no verb at all. */
const verblessWay = (c: Clause): boolean => c.pred === 'none' && c.subj.length > 0 && c.subj.every(s => !s.carried) && new RegExp(`^(?:${WAY})`).test(rest(c, Math.max(0, c.items.findIndex(i => i.from >= c.subj.at(-1)!.to))));
/** A part that went out for work is on its way back, not on order. */
const outOnWork = (t: Telling, name: string): boolean => t.prior.concat(t.told.map(x => x.entry)).some(e => e.kind === 'out' && e.part === name);
const asGoods = (own: Clause['subj']): Goods[] => own.map(s => ({ item: s.name, from: s.from, to: s.to, thing: s, ...(s.count !== undefined ? { qty: s.count } : {}) }));

/** "told the bearing house to send two", "the dealer's getting me a cap in", "asked them to get me one": the seller has it in hand. Gives the item index where the goods begin. */
export function sendsMe(t: Telling, c: Clause): number | undefined {
  const k = c.items.findIndex((i, n) => n >= c.vi && i.t === 'verb' && /^(send|post|ship|mail|get|bring|put)$/.test(i.base ?? '') && /^(me|us|over|out|down|up)$/.test(c.items[n + 1]?.low ?? '') && i.form === 'ing');
  if (k > 0 && c.items[k - 1]!.t === 'be' && (sourceSubject(t, [c]) !== undefined || /^(he|she|they)$/.test(c.who ?? ''))) return k + 2;
  const coming = /^(get|have)$/.test(c.verb?.base ?? (c.pred === 'have' ? 'have' : '')) && /^(he|she|they|person)$/.test(c.who ?? '') ? c.items.findIndex((i, n) => i.np !== undefined && /^(coming|on)$/.test(c.items[n + 1]?.low ?? '') && /\b(coming|on (its|the|their) way|on order)\b/.test(lowText(t))) : -1;
  if (coming > 0) return coming; // "they got my chain coming on the twelfth"
  const told = asks(c) ? c.items.findIndex((i, n) => n > c.vi && i.t === 'to' && (/^(send|post|ship|mail)$/.test(c.items[n + 1]?.base ?? '') || /^(get|order|make|cut)$/.test(c.items[n + 1]?.base ?? '') && /^(me|us)$/.test(c.items[n + 2]?.low ?? ''))) : -1;
  if (told > 0 && !/^(he|she|they|person)$/.test(c.who ?? '') && c.items.slice(told + 2).some(i => i.np)) return told + 2;
  const before = t.clauses[t.at - 1], verb = c.items.findIndex((i: Item) => i.t !== 'cc' && i.t !== 'mark');
  const onward = before && asks(before) && !/^(he|she|they|person)$/.test(before.who ?? '') && before.items.some(i => i.t === 'to') && c.items[verb]?.form === 'base' && /^(send|post|ship|mail|get|order)$/.test(c.items[verb]!.base ?? '') && /^(me|us)$/.test(c.items[verb + 1]?.low ?? '');
  return onward ? verb + 2 : undefined; // "told him to go ahead and get me one"
}
const asks = (c: Clause): boolean => /^(tell|ask|get|have)$/.test(c.verb?.base ?? '') && c.verb!.form !== 'base' && !c.neg;

/** "they've got my chain coming on the twelfth". */
export function theyHave(c: Clause): number | undefined {
  const ing = c.items.findIndex(i => i.low === 'coming');
  return ing > 0 && c.verb?.base === 'get' && /^(they|he|she|person)$/.test(c.who ?? '') && c.obj.some(o => o.from < c.items[ing]!.from) && c.items.slice(ing).some(i => i.f?.dim === 'when') ? c.vi + 1 : undefined;
}

/** "the bolts are due Wednesday from the farm supply", "it's coming from the dealer": said of a thing with who sends it. */
export function comingFrom(t: Telling, c: Clause): boolean {
  if (!c.subj.length || /^(i|we|he|she|person)$/.test(c.who ?? '') || c.items[sourceIn(t.sheet, c.items)?.at ?? -1]?.low !== 'from') return false;
  return /\b(is|are|'s|'re|was|were) (still |now |all |just )?(due|coming|expected|promised|on (its|their|the) way|in the (post|mail)|to come|to follow)\b/.test(lowText(t, c)) && !/\b(back|home)\b/.test(lowText(t, c));
}

/** "put a deposit on the crown wheel", "left him a deposit for the rims": promised, not paid for. Gives the item index where the goods begin. */
export function deposited(c: Clause): number | undefined {
  const k = c.items.findIndex((i, n) => n > c.vi && i.np !== undefined && /\b(deposit|down payment)$/.test(i.np.said) && !i.np.stands);
  if (k < 0 || !/^(give|put|leave|pay|send|lay)$/.test(c.verb?.base ?? '') || /^(base|ing)$/.test(c.verb!.form ?? '') && c.verb!.low !== 'put' || c.neg) return undefined;
  const on = c.items.findIndex((i, n) => n > k && /^(on|for)$/.test(i.low) && c.items[n + 1]?.np);
  return on > 0 ? on + 1 : undefined;
}
