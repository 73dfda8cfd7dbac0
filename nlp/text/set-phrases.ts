import type { Token } from '../types.ts';
import { IDIOMS } from '../words/idioms.ts';
import { tokenize } from './tokens.ts';

const OATHS = ['on earth', "on god 's green earth", "on god 's earth", 'in the world', 'in blazes', 'the blazes', 'in hell', 'the hell', 'in the hell', 'the heck', 'in heck', 'the devil', 'the dickens', 'in tarnation', "in god 's name", "in heaven 's name", 'in the name of god', 'the divil', 'the flip', 'the deuce'].map(s => s.split(' '));
/** "where on earth did I put it": an oath after the word that asks adds nothing to the question. */
export function oaths(tokens: readonly Token[]): [number, number][] {
  return tokens.flatMap((t, i): [number, number][] => {
    if (!/^(what|where|when|how|who|why|which)$/.test(t.low)) return [];
    const from = tokens[i + 1]?.low === "'s" ? i + 2 : i + 1;
    if (tokens[from]?.low === ',' && tokens[from + 2]?.low === ',' && /^(furthermore|moreover|then|also|please|pray|incidentally|again|now)$/.test(tokens[from + 1]!.low)) return [[from, from + 3]];
    const hit = OATHS.find(o => o.every((w, k) => tokens[from + k]?.low === w));
    return hit && !/^(of|where|that|which)$/.test(tokens[from + hit.length]?.low ?? '') ? [[from, from + hit.length]] : [];
  });
}

/** Set phrases by their first word. */
const SET = new Map<string, string[][]>();
for (const words of IDIOMS.map(s => tokenize(s).map(t => t.low))) SET.set(words[0]!, [...SET.get(words[0]!) ?? [], words]);

/** Set phrases, where they stand alone: at a note's or sentence's edge, or between marks. "Of course" is dropped anywhere. */
export function idioms(tokens: readonly Token[]): [number, number][] {
  const out: [number, number][] = [];
  for (let i = 0; i < tokens.length; i++) {
    const hit = SET.get(tokens[i]!.low)?.find(s => s.every((w, k) => tokens[i + k]?.low === w));
    if (!hit) continue;
    const edge = (k: number): boolean => k < 0 || k >= tokens.length || /^[.,;:!?…–—-]+$/.test(tokens[k]!.low);
    const loose = /^(of course|i guess|i suppose|you know|believe it or not|at last|at long last|on the nose|or so|give or take|bless it|inside and out|wouldn't you know it|wouldn't you know|would you believe|needless to say|lord willing|god willing|weather permitting|no bother|no bother at all|no trouble at all)$/.test(hit.join(' '));
    const whole = edge(i - 1) && edge(i + hit.length);
    if (!(whole || loose || hit.length >= 3 && (edge(i - 1) || edge(i + hit.length)))) continue;
    if (/^(hang on|hold on|hold up|as usual|let me see|let 's see)$/.test(hit.join(' ')) && !whole) continue;
    const end = whole && tokens[i + hit.length]?.low === ',' && i > 0 && tokens[i - 1]?.low === ',' ? i + hit.length + 1 : i + hit.length;
    const inside = whole && tokens[i - 1]?.low === ',' && tokens[i + hit.length]?.low === ',' && /^('s|is|are|was|were|has|have|had|'ll|will|would|'d|could|can|might|may|wants|want|said|says)$/.test(tokens[i + hit.length + 1]?.low ?? '');
    out.push([inside ? i - 1 : i, end]);
    i = end - 1;
  }
  return out;
}

/** ", company or no company": come what may. */
export const whicheverWay = (tokens: readonly Token[]): [number, number][] => tokens.flatMap((t, i): [number, number][] => (t.low === 'or' && tokens[i + 1]?.low === 'no' && i > 0 && tokens[i - 1]!.low === tokens[i + 2]?.low ? [[tokens[i - 2]?.low === ',' ? i - 2 : i - 1, i + 3]] : []));
