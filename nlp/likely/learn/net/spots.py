"""The single words and figures of a note as the net learns from them: which of them tell a deed, a figure's place or a part's state by themselves, and of what."""
import re
import torch
from sorts import ASKED, MEASURED, SORTS, UNITS, VERDICTS, sort_of

# What a word or a figure may tell by itself: a deed, a figure, a word of what was found; how ('asWas' of a figure read, 'begun' of a deed done); that it names what an entry of a sort is about;
# what a figure read measures and, of a bare one, in what unit; what was thought of a part found so; that it names what a question of a kind is about, or what of it is asked.
SPOTS = ['work', 'job', 'reading', 'hours', 'price', 'finding', 'asWas', 'begun', *(f'of {sort}' for sort in SORTS), *(f'what {w}' for w in MEASURED), *(f'in {u}' for u in UNITS), *(f'verdict {v}' for v in VERDICTS), *(f'asked {a}' for a in ASKED)]
DEEDS, FIGURES, STATES = ('work', 'job'), ('reading', 'hours', 'price'), ('finding',)
FIGURE_OF = {'reading': 'value', 'hours': 'hours', 'quote': 'price', 'bought': 'price', 'order': 'price'}


def deed(word, verb, bases=()):
    """Whether a word is a form of a verb: as the trade's words have it, or as far as its letters tell."""
    v = verb[0] if verb else ''
    return v in bases or len(v) > 2 and len(word) - len(v) <= 4 and (word.startswith(v[:-1]) if v.endswith(('e', 'y')) else word.startswith(v))


def plain(what):
    return re.sub(r'[^a-z]+', ' ', str(what).lower()).strip().removesuffix('s')


def near(figures, value):
    """The stretches [from, to) of tokens that say a figure."""
    return [(a, b) for a, b, v, _ in figures if v == value or isinstance(v, (int, float)) and isinstance(value, (int, float)) and abs(v - value) <= 0.005 * abs(value)]


class Spots:
    def __init__(self, note, sayable):
        """sayable: the tokens of the note that have pieces."""
        self.note, self.sayable = note, sayable
        self.figures = sorted({(a, b) for a, b, v, _ in note['values'] if isinstance(v, (int, float))})
        self.told, self.doubtful, self.unsure, self.asked = {}, set(), set(), []

    def tell(self, entry, clause, condition):
        """Marks where an entry is told; gives that stretch. condition: the tokens of what was found."""
        kind = entry['kind']
        column = 'price' if kind in ('quote', 'bought', 'order') else kind
        if column not in SPOTS or column == 'price' and entry.get('price') is None:
            return None
        where = self.find(entry, kind, clause, condition)
        if entry.get('maybe') or not where:
            (self.unsure.add(column) if not where else self.doubtful.update((s, column) for s in self.single(where, column)))
            return None
        for s in self.single(where, column):
            says = self.told.setdefault(s, {})
            says[column] = True
            if kind == 'reading':
                says['asWas'] = bool(entry.get('asWas'))
                says.update({f'what {w}': plain(entry.get('what')) == plain(w) for w in MEASURED})
                figure = next((v for a, b, v, dim in self.note['values'] if (a, b) == s and dim == 'number'), None)
                if figure is not None:
                    thou = entry.get('unit') == 'in' and not near([(*s, figure, '')], entry['value'])
                    says.update({f'in {u}': u == 'thou' if thou else u == entry.get('unit') for u in UNITS})
            if kind == 'finding':
                says.update({f'verdict {v}': entry.get('verdict') == v for v in VERDICTS})
            if kind == 'work':
                says['begun'] = entry.get('done') is False
        return where

    def name(self, entry, tokens):
        """Marks the words that name what an entry is about."""
        for s in self.single((min(tokens), max(tokens) + 1), 'finding') if tokens else []:
            if s[0] in tokens and not entry.get('maybe'):
                self.told.setdefault(s, {})[f'of {sort_of(entry)}'] = True
            else:
                self.doubtful.add((s, f'of {sort_of(entry)}'))

    def ask(self, what, tokens, maybe):
        """Marks the words that name what a question is about, or what of it is asked."""
        for n in tokens:
            if maybe:
                self.doubtful.add(((n, n + 1), f'asked {what}'))
            else:
                self.told.setdefault((n, n + 1), {})[f'asked {what}'] = True

    def unaligned(self, entry):
        """Where an entry is told is not known: of no word that it doesn't tell it."""
        self.unsure |= {entry['kind'], f'of {sort_of(entry)}', *(['price'] if entry['kind'] in ('quote', 'bought', 'order') else [])}

    @staticmethod
    def single(where, column):
        return [(n, n + 1) for n in range(*where)] if column == 'finding' else [where]

    def find(self, entry, kind, clause, condition):
        far = lambda s: (far_from(clause, s[0]), s[0] - s[1])
        if kind in FIGURE_OF:
            value = entry.get(FIGURE_OF[kind])
            there = near(self.note['values'], value) or (near(self.note['values'], value * 1000) if isinstance(value, (int, float)) else [])
            return min(there, key=far) if there else None
        if kind == 'finding':
            return (min(condition), max(condition) + 1) if condition else None
        verb = re.split(r'[\s-]+', str(entry.get('action' if kind == 'work' else 'do')).lower())
        tokens = self.note['tokens']
        there = [(n, n + 1) for n in self.sayable if deed(tokens[n][0], verb, tokens[n][3])]
        return min(there, key=far) if there else None

    def rows(self, pieces):
        """(stretch, its pieces, targets, which of them count). pieces: of a stretch."""
        out = []
        for s in sorted({(n, n + 1) for n in self.sayable} | set(self.figures) | set(self.told)):
            is_, counts = torch.zeros(len(SPOTS)), torch.zeros(len(SPOTS))
            single = s[1] == s[0] + 1 and s[0] in self.sayable
            for k, column in enumerate(SPOTS):
                says = self.told.get(s, {})
                may = single if column in DEEDS else s in self.figures if column in FIGURES else single if column in STATES or column.startswith('of ') or column.startswith('asked ') and self.note.get('asks') is not None else False
                if column in says:
                    is_[k], counts[k] = float(says[column]), 1
                elif may and column not in self.unsure and (s, column) not in self.doubtful:
                    counts[k] = 1
            if counts.any():
                out.append((s, pieces(*s), is_, counts))
        return [r for r in out if r[1]]


def far_from(clause, token):
    return 0 if clause['from'] <= token < clause['to'] else clause['from'] - token if token < clause['from'] else 1.5 * (token - clause['to'] + 1)
