import type { Answer } from '../../domain/model/answer.ts';
import type { Ask } from '../../domain/model/ask.ts';
import type { StoredEntry } from '../../domain/model/stored.ts';
import type { Button, Reply } from '../incoming.ts';
import { DRAW_IT } from '../planning/draw-button.ts';
import type { Answered } from '../turn/answers.ts';
import type { OpenQuestion } from '../turn/open-question.ts';
import { areNumbered } from '../turn/choice.ts';
import { MORE } from '../turn/pages.ts';
import { scratchNote } from '../turn/strike.ts';
import { sayEntry } from './entry.ts';
import { capital, listed, stop } from './words.ts';

/** What a turn came to, to be put in words. */
interface Came {
  note: number;
  at: string;
  entries?: readonly StoredEntry[];
  asks?: readonly Ask[];
  answered?: Answered;
  open?: OpenQuestion;
  files?: readonly string[];
  unread?: readonly string[];
  warnings?: readonly string[];
  machine?: string;
  switched?: boolean;
  /** Lines that stand for themselves. */
  lines?: readonly string[];
}

/** The reply to a turn: what was understood, read back in a line; what speaks against it; the answers; the one question that is open. */
export function compose(came: Came): Reply {
  const { entries = [], asks = [], answered, open, unread = [], warnings = [], lines = [] } = came;
  const read = readBack(entries, came.at);
  const switched = came.machine && (came.switched || (!read && !asks.length)) ? [`At the ${came.machine} now.`.replace(/^At the (?=\p{Lu})/u, 'At ')] : [];
  const later = answered?.later.length ? ['Working it out…'] : [];
  const nothing = !read && !asks.length && !lines.length && !warnings.length && !open && !switched.length ? ['Kept, but I found nothing in it to log.'] : [];
  const left = unread.length && (read || asks.length) ? [`Not understood: "${shortened(unread.join('", "'))}".`] : [];
  const say = [...lines, ...switched, ...(read ? [read] : []), ...warnings, ...(answered?.lines ?? []), ...later, ...nothing, ...left, ...(open ? [asked(open)] : [])];
  return {
    note: came.note, entries: [...entries], asks: [...asks], answers: answered?.answers ?? [], warnings: [...warnings],
    question: open ? { text: open.text, choices: open.choices } : null, unread: [...unread], say: [...new Set(say)].join('\n'),
    buttons: buttons(came), files: [...(came.files ?? [])], later: answered?.later,
  };
}

/** Enough of long words to know them again; the note keeps them all. */
const shortened = (words: string): string => (words.length > 200 ? `${words.slice(0, 200)}…` : words);

/** Everything logged, in one line; an amend that found nothing says so. */
function readBack(entries: readonly StoredEntry[], at: string): string {
  if (!entries.length) return '';
  const lost = entries.filter(e => e.entry.kind === 'amend' && e.entry.of === undefined);
  const struck = entries.filter(e => e.entry.kind === 'amend' && e.entry.undo && e.entry.of !== undefined);
  const rest = entries.filter(e => !lost.includes(e) && !struck.includes(e));
  return [
    struck.length ? `Struck ${struck.length === 1 ? 'it' : `all ${struck.length} of it`}.` : '',
    rest.length ? stop(capital(rest.map(e => sayEntry(e.entry, { at })).join('; '))) : '',
    lost.length ? 'I found nothing before it to change; it is kept as said.' : '',
  ].filter(Boolean).join(' ');
}

const asked = ({ text, choices }: OpenQuestion): string => {
  // Figures to choose from stand in the question itself.
  if (!choices.length || !areNumbered(choices)) return text;
  return `${text} ${stop(listed(choices.map((c, i) => `${i + 1} ${c}`), 'or'))}`;
};

/** Every button also has its typed form: that is what it sends. */
function buttons({ open, entries = [], answered, note }: Came): Button[] {
  if (open) return open.choices.map(c => ({ label: c, send: c }));
  return [
    ...(answered?.page?.lines.length ? [MORE] : []),
    ...(answered?.answers.some(canBeDrawn) ? [DRAW_IT] : []),
    ...(entries.some(e => e.entry.kind !== 'amend') ? [{ label: 'Scratch that', send: scratchNote(note) }] : []),
  ];
}

const canBeDrawn = (a: Answer): boolean => (a.kind === 'blocked' && a.causes.length > 0) || (a.kind === 'finish' && a.p50 !== null)
  || (a.kind === 'spent' && a.items.length > 0) || (a.kind === 'timeSpent' && a.hours > 0);
