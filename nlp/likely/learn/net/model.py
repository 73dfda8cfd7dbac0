"""The net: a small sentence encoder, and over each piece what it says for the kinds of its clause, for the questions of the note, of names and fields, and of where clauses begin."""
import torch
from torch import nn
from transformers import BertModel
from sorts import ASKS, ATTRIBUTES, FIELDS, SORTS
from spots import SPOTS

SEEK = 64  # width in which a clause asks a piece whether it is of the name, or of a field
TOLD = len(SORTS) + len(ATTRIBUTES)
PARTS = [TOLD, TOLD, len(ASKS), SEEK, SEEK, SEEK, SEEK, 1, len(SPOTS)]  # on the whole, most, asked, asking and answering of names, of fields, begins, by itself: the columns of weighed.ts


class Drop(nn.Module):
    """Dropout with masks cut from one long row of chance: drawing a new one for every number takes a third of the time of learning on a processor."""
    CHANCE = 1 << 23

    def __init__(self, share):
        super().__init__()
        self.kept = (torch.rand(self.CHANCE) >= share).float() / (1 - share)

    def forward(self, x):
        if not self.training:
            return x
        at = int(torch.randint(self.CHANCE - x.numel(), ()))
        return x * self.kept[at:at + x.numel()].view_as(x)


class Net(nn.Module):
    def __init__(self, encoder):
        super().__init__()
        self.encoder = BertModel.from_pretrained(encoder, add_pooling_layer=False, attn_implementation='eager', hidden_dropout_prob=0.0, attention_probs_dropout_prob=0.0)
        for layer in [self.encoder.embeddings, *(part.output for at in self.encoder.encoder.layer for part in (at.attention, at))]:
            layer.dropout = Drop(0.1)
        self.drop = Drop(0.1)
        self.out = nn.Linear(self.encoder.config.hidden_size, sum(PARTS))
        nn.init.constant_(self.out.bias[-len(SPOTS):], -4.0)  # few words tell anything by themselves
        self.bias = nn.Parameter(torch.cat([torch.full((len(SORTS),), -3.0), torch.full((len(ATTRIBUTES),), -2.0), torch.full((len(ASKS),), -3.0)]))
        self.seeks = nn.Parameter(torch.randn(len(SORTS), SEEK) * 0.3)
        self.found = nn.Parameter(torch.tensor(-3.0))
        self.fields = nn.Parameter(torch.randn(len(FIELDS), SEEK) * 0.3)
        self.held = nn.Parameter(torch.full((len(FIELDS),), -3.0))

    def pieces(self, ids, types, mask=None):
        """[notes, pieces, columns]"""
        return self.out(self.drop(self.encoder(input_ids=ids, token_type_ids=types, attention_mask=mask).last_hidden_state))

    def forward(self, batch):
        """For a batch of examples: log odds, targets and which count, of clauses' sorts and attributes, of the pieces of names and fields, of questions, and of where clauses begin; none where there are none."""
        notes, longest = len(batch), max(len(x.ids) for x in batch)
        ids, types, mask, own = (torch.zeros(notes, longest, dtype=torch.long) for _ in range(4))
        for i, x in enumerate(batch):
            n = len(x.ids)
            ids[i, :n], types[i, :n], mask[i, :n], own[i, x.own] = torch.tensor(x.ids), torch.tensor(x.types), 1, 1
        whole, most, asked, asking, answering, asks_of, says, begins, alone = (p.reshape(notes * longest, -1) for p in self.pieces(ids, types, mask).float().split(PARTS, 2))
        told = names = fields = spots = None
        clauses = [(i, c[0]) for i, x in enumerate(batch) for c in x.clauses]
        alone_of = [(i, c[0]) for i, x in enumerate(batch) for c in x.spots]
        if clauses:
            share = shares(clauses, longest, notes)
            z = self.bias[:TOLD] + share @ whole + most_of(most, clauses, longest)
            told = z, *(torch.stack([c[k] for x in batch for c in x.clauses]) for k in (1, 2))
            share = torch.cat([share, shares(alone_of, longest, notes)])
            names = pointed(batch, ('names', 'spot_names'), share @ asking, answering, self.seeks, self.found.expand(len(SORTS)))
            fields = pointed(batch, ('fields', 'spot_fields'), share @ asks_of, says, self.fields, self.held)
        if alone_of:
            spots = shares(alone_of, longest, notes) @ alone, *(torch.stack([c[k] for x in batch for c in x.spots]) for k in (1, 2))
        q = self.bias[TOLD:] + asked.reshape(notes, longest, -1).masked_fill(own[:, :, None] == 0, -1e4).max(1).values
        cuts = None
        if any(x.cuts[0] for x in batch):
            z = begins[[i * longest + p for i, x in enumerate(batch) for p in x.cuts[0]], 0]
            cuts = z, torch.tensor([y for x in batch for y in x.cuts[1]]), torch.ones(len(z))
        return {'told': told, 'names': names, 'fields': fields, 'spots': spots, 'asks': (q, torch.stack([x.asks[0] for x in batch]), torch.stack([x.asks[1] for x in batch])), 'cuts': cuts}


def pointed(batch, which, asking, answering, seeks, bias):
    """Of names or fields, asked from clauses and from single words and figures (rows of `asking`, in this order): how much each piece of the note belongs to one."""
    rows, first = [], {which[0]: 0, which[1]: sum(len(x.clauses) for x in batch)}
    for i, x in enumerate(batch):
        for at in which:
            rows += [(i, first[at] + c, k, pieces) for c, k, pieces in getattr(x, at)]
        first = {which[0]: first[which[0]] + len(x.clauses), which[1]: first[which[1]] + len(x.spots)}
    if not rows:
        return None
    what = [r[2] for r in rows]
    seek = asking[[r[1] for r in rows]] + seeks[what]
    # Each row is asked of its own note's pieces: the rows of all notes, side by side.
    longest = len(answering) // len(batch)
    own = [[k for k, r in enumerate(rows) if r[0] == i] for i in range(len(batch))]
    z = torch.cat([seek[k] @ answering[i * longest:(i + 1) * longest].T for i, k in enumerate(own) if k]) / SEEK ** 0.5
    order = [k for ks in own for k in ks]
    rows = [rows[k] for k in order]
    is_, counts = torch.zeros_like(z), torch.zeros_like(z)
    for k, (i, _, _, pieces) in enumerate(rows):
        is_[k, pieces], counts[k, :len(batch[i].ids)] = 1, 1
    return z + bias[[r[2] for r in rows]][:, None], is_, counts


def shares(stretches, longest, notes):
    """For each stretch, (note, pieces), a row over all pieces of the batch: by it their columns give what the stretch says on the whole."""
    share = torch.zeros(len(stretches), notes * longest)
    for k, (i, pieces) in enumerate(stretches):
        share[k, torch.tensor(pieces) + i * longest] = 1 / len(pieces)
    return share


def most_of(columns, stretches, longest):
    """Of each stretch: what the piece says that says most."""
    width = max(len(pieces) for _, pieces in stretches)
    at, has = torch.zeros(len(stretches), width, dtype=torch.long), torch.zeros(len(stretches), width, 1)
    for k, (i, pieces) in enumerate(stretches):
        at[k, :len(pieces)], has[k, :len(pieces)] = torch.tensor(pieces) + i * longest, 1
    return columns[at].masked_fill(has == 0, -1e4).max(1).values
