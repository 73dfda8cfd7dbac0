"""Labelled notes (`npm run learn:labels`) as the net learns from them: numbers of word pieces, and what each clause and the whole note tell."""
import json
import re
import torch

SORTS = ['amend', 'arrival', 'bought', 'finding', 'fit off', 'fit on', 'fit temporary', 'fit tight', 'fit tried', 'hands', 'hours', 'job', 'order', 'out', 'quote', 'reading',
         'recheck', 'rule', 'stow', 'wait', 'want', 'weather', 'work']
VERDICTS = ['good', 'reuse', 'watch', 'repair', 'replace']
ATTRIBUTES = [*VERDICTS, 'asWas', 'begun']
ASKS = 'blocked buy next where wasHow provisional due history spent timeSpent finish cheapest forecast sum picture'.split()
# The field that names what an entry of a kind is about.
NAMES = {'fit': 'part', 'finding': 'part', 'reading': 'part', 'work': 'part', 'job': 'part', 'want': 'item', 'order': 'item', 'bought': 'item', 'quote': 'item', 'arrival': 'item',
         'recheck': 'part', 'stow': 'part', 'out': 'part', 'wait': 'part', 'hours': 'part'}
SMALL = set('a an the my his her its our that this those these some of for to on in at and'.split())
MOST, MOST_BEFORE = 160, 48  # as in weighed.ts


def sort_of(entry):
    return f"fit {entry.get('state', '')}" if entry['kind'] == 'fit' else entry['kind']


def key(word):
    """A word as names are compared: lower case, without possessive or plural."""
    w = re.sub(r"[^a-z0-9./]+", '', re.sub(r"['’]s$", '', word.lower()))
    return w[:-1] if len(w) > 3 and w.endswith('s') and not w.endswith('ss') else w


def keys(text):
    return [k for k in map(key, re.split(r'[\s-]+', str(text))) if k and k not in SMALL]


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
    asks: (targets, which count). own: the note's pieces."""

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
        for m in re.finditer(r"[A-Za-z0-9./']+", prior[0]) if prior else []:
            p = over(before['offset_mapping'][-MOST_BEFORE:], m.start(), m.end(), 1)
            if p:
                words.append(key(m.group())), at.append(-200 + len(words)), of.append(p)
        for n, (low, a, b) in enumerate(tokens):
            p = over(offsets, a, b, 0)
            if p:
                words.append(key(low)), at.append(n), of.append(p)
        self.clauses, self.names, place = [], [], {}
        for n, c in enumerate(note['clauses']):
            pieces = over(offsets, tokens[c['from']][1], tokens[c['to'] - 1][2], 0) if c['to'] > c['from'] else []
            if not pieces:
                continue
            never = note.get('never')
            is_, counts = torch.zeros(len(SORTS) + len(ATTRIBUTES)), torch.zeros(len(SORTS) + len(ATTRIBUTES))
            for k, s in enumerate(SORTS):
                is_[k] = s in c['is']
                counts[k] = s.split(' ')[0] == never if never else s not in c['maybe'] or s in c['is']
            place[n] = len(self.clauses)
            self.clauses.append((pieces, is_, counts))
        told = {}
        for entry in note['entries']:
            self.tell(note, entry, place, told, words, at, of)
        self.asks = (torch.zeros(len(ASKS)), torch.zeros(len(ASKS)))
        if note.get('asks') is not None:
            self.asks[1][:] = 1
            for ask in note['asks']:
                k = ASKS.index(ask['kind'])
                self.asks[1 if ask.get('maybe') else 0][k] = not ask.get('maybe')

    def tell(self, note, entry, place, told, words, at, of):
        """What an entry says beside its kind, of the clause that has most of its words."""
        sort, tokens = sort_of(entry), note['tokens']
        among = [n for n in place if sort in note['clauses'][n]['is']]
        if sort not in SORTS or entry.get('maybe') or not among:
            return
        said = [w for field, v in entry.items() if field != 'kind' for w in keys(v)]
        def holds(n):
            c = note['clauses'][n]
            own = {key(t[0]) for t in tokens[c['from']:c['to']]}
            return sum(w in own for w in said) - 0.6 * told.get((n, sort), 0)
        n = max(among, key=holds)
        told[n, sort] = told.get((n, sort), 0) + 1
        _, is_, counts = self.clauses[place[n]]
        says = {'finding': {v: entry.get('verdict') == v for v in VERDICTS}, 'reading': {'asWas': bool(entry.get('asWas'))}, 'work': {'begun': entry.get('done') is False}}
        for attribute, yes in says.get(entry['kind'], {}).items():
            k = len(SORTS) + ATTRIBUTES.index(attribute)
            counts[k], is_[k] = 1, max(is_[k], float(yes))
        name = keys(entry.get(NAMES.get(entry['kind'], ''), ''))
        if not name:
            return
        c = note['clauses'][n]
        far = lambda i: 0 if c['from'] <= at[i] < c['to'] else c['from'] - at[i] if at[i] < c['from'] else 1.5 * (at[i] - c['to'] + 1)
        pieces = [p for i in places(words, name, far) for p in of[i]]
        for other in self.names:  # several of a sort told in one clause share what names them
            if other[0] == place[n] and other[1] == SORTS.index(sort):
                other[2].extend(pieces)
                return
        self.names.append((place[n], SORTS.index(sort), pieces))


def examples(path, tokenizer, hold):
    """The notes to learn from and those of the files held back, each once."""
    learn, held, seen = [], [], set()
    for line in open(path):
        note = json.loads(line)
        once = (note['text'], note.get('never'), json.dumps(note['entries']), json.dumps(note.get('asks')))
        if once in seen or not note['clauses'] and note.get('asks') is None:
            continue
        seen.add(once)
        x = Example(note, tokenizer)
        if x.own:
            (held if note['file'].split('.')[0] in hold else learn).append(x)
    return learn, held
