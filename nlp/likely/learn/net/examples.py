"""Labelled notes (`npm run learn:labels`) as the net learns from them: numbers of word pieces, and what each clause and the whole note tell."""
import json
import re
from difflib import SequenceMatcher
import torch
from sorts import ASKED, ASKS, ATTRIBUTES, FIELDS, NAMES, SKIES, SORTS, VERDICTS, sort_of
from spots import SPOTS, Spots, deed, far_from, near

LIKE = 0.8  # of two words, by the letters they share
SMALL = set('a an the my his her its our that this those these some of for to on in at and'.split())
MOST, MOST_BEFORE = 160, 48  # as in weighed.ts


def key(word):
    """A word as names are compared: lower case, without possessive or plural."""
    w = re.sub(r"[^a-z0-9./]+", '', re.sub(r"['’]s$", '', word.lower()))
    return w[:-2] if len(w) > 5 and re.search('(s|x|ch|sh)es$', w) else w[:-1] if len(w) > 3 and w.endswith('s') and not w.endswith('ss') else w


def keys(text):
    return [k for k in map(key, re.split(r'[\s-]+', str(text))) if k and k not in SMALL]


def spelt(words, name):
    """A name as the note spells it: a word that the note does not have gives way to its halves there ("tail gate" of a tailgate), its short form ("crank"), or one much like it ("pushing" of a bushing)."""
    out, others = [], {x for x in words if len(x) > 3 and x.isalpha()}
    for w in name:
        halves = [x for x in others if w.startswith(x) or w.endswith(x) or len(w) > 2 and x.startswith(w)] if w not in words and w.isalpha() else []
        like = [(SequenceMatcher(None, x, w).ratio(), x) for x in others] if w not in words and w.isalpha() and len(w) > 3 and not halves else []
        out += halves or ([max(like)[1]] if like and max(like)[0] >= LIKE else [w])
    return out


def places(words, name, far):
    """Which of the words say a name: the stretch with most of it, sooner a near one; each word of it that is not there where it stands nearest."""
    best = None
    for i, w in enumerate(words):
        if w not in name:
            continue
        left, got, j = list(name), [], i
        while j < len(words) and left:
            if words[j] in left:
                left.remove(words[j])
                got.append(j)
            elif words[j] and words[j] not in SMALL:
                break
            j += 1
        score = 10 * len(got) / len(name) - 0.1 * min(far(i), 40)
        if best is None or score > best[0]:
            best = (score, got, left)
    if best is None:
        return []
    got = set(best[1])
    for w in best[2]:
        more = [i for i, x in enumerate(words) if x == w and i not in got]
        if more:
            got.add(min(more, key=far))
    return sorted(got)


class Example:
    """ids, types: the note before (type 1) and the note (type 0) in pieces. clauses: (pieces, targets, which of them count). names: (clause, sort, pieces of the name).
    fields: (clause, field, pieces of what it says; none where it says nothing).
    spots: (pieces, targets, which count) of single words and figures; spot_names, spot_fields: as names and fields, asked from a spot, or from the words of a name.
    asks: (targets, which count). own: the note's pieces. cuts: (pieces that begin a word, whether each begins a clause). bare: its stops were taken out."""

    def __init__(self, note, tokenizer):
        cut = lambda text: tokenizer(text, return_offsets_mapping=True, add_special_tokens=False)
        prior, own, tokens = (note.get('prior') or [])[-1:], cut(note['text']), note['tokens']
        before = cut(prior[0]) if prior else {'input_ids': [], 'offset_mapping': []}
        lead = [tokenizer.cls_token_id] + (before['input_ids'][-MOST_BEFORE:] + [tokenizer.sep_token_id] if prior else [])
        self.ids = lead + own['input_ids'][:MOST] + [tokenizer.sep_token_id]
        self.types = [int(bool(prior) and i < len(lead)) for i in range(len(self.ids))]
        offsets = [(0, 0)] * len(lead) + own['offset_mapping'][:MOST]
        over = lambda spans, a, b, first: [first + i for i, (s, t) in enumerate(spans) if t > s and s < b and t > a]
        self.own = over(offsets, 0, len(note['text']) + 1, 0)
        words, at, of = [], [], []  # of the note before, then of the note: key, place (the note's token, negative before it), pieces
        for m in re.finditer(r"[A-Za-z0-9]+(?:[./'’][A-Za-z0-9]+)*", prior[0]) if prior else []:
            p = over(before['offset_mapping'][-MOST_BEFORE:], m.start(), m.end(), 1)
            if p:
                words.append(key(m.group())), at.append(-200 + len(words)), of.append(p)
        for n, (low, a, b, _) in enumerate(tokens):
            p = over(offsets, a, b, 0)
            if p:
                words.append(key(low)), at.append(n), of.append(p)
        self.cuts, self.bare = ([], []), note.get('bare', False)
        begins = {c['from'] for c in note['clauses']}
        if note.get('cut'):
            for n, (_, a, b, _) in enumerate(tokens[1:], 1):
                for p in over(offsets, a, b, 0)[:1]:
                    self.cuts[0].append(p), self.cuts[1].append(float(n in begins))
        self.clauses, self.names, self.fields, place = [], [], [], {}
        for n, c in enumerate(note['clauses']):
            pieces = over(offsets, tokens[c['from']][1], tokens[c['to'] - 1][2], 0) if c['to'] > c['from'] else []
            if not pieces:
                continue
            never = note.get('never')
            is_, counts = torch.zeros(len(SORTS) + len(ATTRIBUTES)), torch.zeros(len(SORTS) + len(ATTRIBUTES))
            for k, s in enumerate(SORTS):
                is_[k] = s in c['is'] or s == 'remark' and s in c['maybe']  # worth keeping or not, it was understood as none of the others
                counts[k] = s.split(' ')[0] == never if never else s == 'remark' or s not in c['maybe'] or s in c['is']
            place[n] = len(self.clauses)
            self.clauses.append((pieces, is_, counts))
        self.spots, self.spot_names, self.spot_fields = [], [], []
        spots = Spots(note, [a for a in at if a >= 0])
        self.ask(note, words, at, spots)
        asked = [x for k, entry in enumerate(note['entries']) for x in self.tell(note, k, entry, place, words, at, of, spots)]
        if not note.get('never'):
            stretch = lambda a, b: [p for i, n in enumerate(at) if a <= n < b for p in of[i]]
            self.spots = [r[1:] for r in spots.rows(stretch)]
            row_of = {}
            for where, rows in asked:
                if where not in row_of:
                    row_of[where] = len(self.spots)
                    self.spots.append((stretch(*where), torch.zeros(len(SPOTS)), torch.zeros(len(SPOTS))))
                for to, what, pieces in rows:
                    add(to, row_of[where], what, list(pieces))
        self.asks = (torch.zeros(len(ASKS)), torch.zeros(len(ASKS)))
        if note.get('asks') is not None:
            self.asks[1][:] = 1
            for ask in note['asks']:
                k = ASKS.index(ask['kind'])
                self.asks[1 if ask.get('maybe') else 0][k] = not ask.get('maybe')

    @staticmethod
    def ask(note, words, at, spots):
        """Marks what the questions of a note are about, where it says it: the later of two mentions."""
        own = [i for i, a in enumerate(at) if a >= 0]
        for ask in note.get('asks') or []:
            for what, value in ((ask['kind'], ask.get('part') or ask.get('item')), ('what', ask.get('what'))):
                if value and what in ASKED:
                    said = [words[i] for i in own]
                    spots.ask(what, {at[own[i]] for i in places(said, spelt(said, keys(value)), lambda i: len(own) - i)}, ask.get('maybe'))

    def tell(self, note, number, entry, place, words, at, of, spots):
        """What an entry (the so many-th of its note) says beside its kind, of the clause it is told in. Gives what its own word or figure says: [(stretch of tokens, [(names or fields, which, pieces)])]."""
        sort, tokens = sort_of(entry), note['tokens']
        n = next((n for n in place if number in note['clauses'][n]['tells']), None)
        if sort not in SORTS or n is None:
            spots.unaligned(entry)
            return []
        c = note['clauses'][n]
        far = lambda i: far_from(c, at[i])
        own = [i for i, a in enumerate(at) if a >= 0]
        of_words = lambda value: [own[i] for i in places([words[i] for i in own], keys(value), lambda i: far(own[i]))]
        where = spots.tell(entry, c, [at[i] for i in of_words(entry['condition'])] if entry.get('condition') else [])
        name = spelt(words, keys(entry.get(NAMES.get(entry['kind'], ''), '')))
        # Of several with that name the one that stands nearest to the word or figure itself.
        by = lambda i: far(i) + (0.5 * abs(at[i] - where[0]) if where and at[i] >= 0 else 0)
        called = places(words, name, by) if name else []
        spots.name(entry, {at[i] for i in called if at[i] >= 0})
        if entry.get('maybe'):
            return []
        _, is_, counts = self.clauses[place[n]]
        says = {'finding': {v: entry.get('verdict') == v for v in VERDICTS}, 'reading': {'asWas': bool(entry.get('asWas'))}, 'work': {'begun': entry.get('done') is False},
                'weather': {s: entry.get('sky') == s for s in SKIES}, 'hours': {'total': bool(entry.get('total'))}}
        for attribute, yes in says.get(entry['kind'], {}).items():
            k = len(SORTS) + ATTRIBUTES.index(attribute)
            counts[k], is_[k] = 1, max(is_[k], float(yes))
        by_spot, by_name = [], []
        for k, field in enumerate(FIELDS):
            kind, of_it = field.split(' ')
            if kind != entry['kind']:
                continue
            value, found = entry.get(of_it), []
            if isinstance(value, (int, float)) or re.fullmatch(r'\d{4}-\d\d-\d\d', str(value)):
                figures = near(note['values'], value)
                if figures:
                    a, b = min(figures, key=lambda f: (far_from(c, f[0]), f[0] - f[1]))
                    found = [i for i in own if a <= at[i] < b]
            elif of_it in ('action', 'do'):
                deeds = [i for i in own if deed(words[i], keys(value), tokens[at[i]][3])]
                found = [min(deeds, key=far)] if deeds else []
            elif value is not None:
                found = of_words(value)
            if value is None or found:
                pieces = [p for i in found for p in of[i]]
                add(self.fields, place[n], k, list(pieces))
                by_name.append((self.spot_fields, k, pieces))
                if field in ('reading what', 'work product'):
                    by_spot.append((self.spot_fields, k, pieces))
        if name:
            add(self.names, place[n], SORTS.index(sort), [p for i in places(words, name, far) for p in of[i]])
            whole = (self.spot_names, SORTS.index(sort), [p for i in called for p in of[i]])
            by_spot.append(whole), by_name.append(whole)
        return [*([(where, by_spot)] if where else []), *((run, by_name) for run in runs([at[i] for i in called if at[i] >= 0]))]


def runs(tokens):
    """The stretches [from, to) of tokens that stand one after another."""
    out = []
    for n in sorted(set(tokens)):
        if out and out[-1][1] == n:
            out[-1] = (out[-1][0], n + 1)
        else:
            out.append((n, n + 1))
    return out


def joined(x, y):
    """Two notes said in one breath, the second without a note before it: teaches where clauses begin when nothing but the sense tells."""
    z, by, after = Example.__new__(Example), len(x.ids) - 2, len(x.clauses)
    move = lambda pieces: [p + by for p in pieces]
    z.ids, z.types = x.ids[:-1] + y.ids[1:], x.types[:-1] + y.types[1:]
    z.bare, z.own, z.cuts = True, x.own + move(y.own), (x.cuts[0] + move(y.own[:1] + y.cuts[0]), x.cuts[1] + [1.0] + y.cuts[1])
    z.clauses = x.clauses + [(move(pieces), is_, counts) for pieces, is_, counts in y.clauses]
    z.names, z.fields = (a + [(c + after, k, move(pieces)) for c, k, pieces in b] for a, b in ((x.names, y.names), (x.fields, y.fields)))
    z.spots = x.spots + [(move(pieces), is_, counts) for pieces, is_, counts in y.spots]
    z.spot_names, z.spot_fields = (a + [(c + len(x.spots), k, move(pieces)) for c, k, pieces in b] for a, b in ((x.spot_names, y.spot_names), (x.spot_fields, y.spot_fields)))
    z.asks = torch.maximum(x.asks[0], y.asks[0]), torch.minimum(x.asks[1], y.asks[1])
    return z


def add(rows, at, what, pieces):
    """Several of a sort told in one clause, or with one word, share what names them, and what is said of them."""
    for row in rows:
        if row[0] == at and row[1] == what:
            row[2].extend(pieces)
            return
    rows.append((at, what, pieces))


def spoken(note):
    """The note as a recogniser would write it, lower case and without its stops; where its clauses begin is known from the stops. None where it has none."""
    text, tokens, place, out = note['text'], [], {}, ''
    if not re.search(r'[a-z][.,;:]( |$)', text) or len(note['tokens']) < 4 or not note['clauses']:
        return None
    drop = "'’" if len(text) % 2 else ''
    for n, (low, a, b, bases) in enumerate(note['tokens']):
        place[n] = len(tokens)
        if not re.search(r'[^\W_]|[$€£%°#/&+-]', text[a:b]):
            continue
        if out and re.search(r'\s', text[note['tokens'][n - 1][1] + 1:a + 1] if n else ''):
            out += ' '
        elif tokens and tokens[-1][4] < n - 1 and not out.endswith(' '):
            out += ' '
        raw = re.sub(f'[{drop}]', '', text[a:b].lower()) if drop else text[a:b].lower()
        tokens.append([low, len(out), len(out) + len(raw), bases, n])
        out += raw
    place[len(note['tokens'])] = len(tokens)
    clauses = [{**c, 'from': place[c['from']], 'to': place[c['to']]} for c in note['clauses']]
    values = [[place[a], place[b], *rest] for a, b, *rest in note['values']]
    prior = [re.sub(r'\s+', ' ', re.sub(r'[.,;:!?]+(?=\s|$)', '', p.lower())) for p in note.get('prior') or []]
    return {**note, 'text': out, 'tokens': [t[:4] for t in tokens], 'clauses': [c for c in clauses if c['to'] > c['from']], 'values': values, 'prior': prior, 'cut': True, 'bare': True}


def examples(path, tokenizer, hold):
    """The notes to learn from and those of the files held back, each once, as a pair: as written, and as a recogniser would write it (else none)."""
    learn, held, seen = [], [], set()
    for line in open(path):
        note = json.loads(line)
        once = (note['text'], note.get('never'), json.dumps(note['entries']), json.dumps(note.get('asks')))
        if once in seen or not note['clauses'] and note.get('asks') is None:
            continue
        seen.add(once)
        heard = spoken(note)
        pair = Example({**note, 'cut': heard is not None}, tokenizer), heard and Example(heard, tokenizer)
        if pair[0].own:
            # The contract's own notes and the phrases count twice: a phrase stands for a family of notes.
            (held if note['file'].split('.')[0] in hold else learn).extend([pair] * (2 if note['file'] in ('dev-notes.jsonl', 'phrases') else 1))
    return learn, held
