"""The net: a small sentence encoder, and over each piece what it says for the kinds of its clause, for the questions of the note, of names and fields, and of where clauses begin."""
import torch
from torch import nn
from transformers import BertModel
from examples import ASKS, ATTRIBUTES, FIELDS, SORTS

SEEK = 64  # width in which a clause asks a piece whether it is of the name, or of a field
TOLD = len(SORTS) + len(ATTRIBUTES)
PARTS = [TOLD, TOLD, len(ASKS), SEEK, SEEK, SEEK, SEEK, 1]  # on the whole, most, asked, asking and answering of names, of fields, begins: the columns of weighed.ts


class Net(nn.Module):
    def __init__(self, encoder):
        super().__init__()
        self.encoder = BertModel.from_pretrained(encoder, add_pooling_layer=False, attn_implementation='eager')
        self.drop = nn.Dropout(0.1)
        self.out = nn.Linear(self.encoder.config.hidden_size, sum(PARTS))
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
        whole, most, asked, asking, answering, asks_of, says, begins = (p.reshape(notes * longest, -1) for p in self.pieces(ids, types, mask).float().split(PARTS, 2))
        clauses = [(i, c) for i, x in enumerate(batch) for c in x.clauses]
        told = names = fields = None
        if clauses:
            width = max(len(c[0]) for _, c in clauses)
            at, has = torch.zeros(len(clauses), width, dtype=torch.long), torch.zeros(len(clauses), width, 1)
            for k, (i, (pieces, _, _)) in enumerate(clauses):
                at[k, :len(pieces)], has[k, :len(pieces)] = torch.tensor(pieces) + i * longest, 1
            mean = lambda of: (of[at] * has).sum(1) / has.sum(1)
            z = self.bias[:TOLD] + mean(whole) + most[at].masked_fill(has == 0, -1e4).max(1).values
            told = z, torch.stack([c[1] for _, c in clauses]), torch.stack([c[2] for _, c in clauses])
            names = self.pointed(batch, 'names', mean(asking), answering.reshape(notes, longest, -1), self.seeks, self.found.expand(len(SORTS)))
            fields = self.pointed(batch, 'fields', mean(asks_of), says.reshape(notes, longest, -1), self.fields, self.held)
        q = self.bias[TOLD:] + asked.reshape(notes, longest, -1).masked_fill(own[:, :, None] == 0, -1e4).max(1).values
        cuts = None
        if any(x.cuts[0] for x in batch):
            z = begins[[i * longest + p for i, x in enumerate(batch) for p in x.cuts[0]], 0]
            cuts = z, torch.tensor([y for x in batch for y in x.cuts[1]]), torch.ones(len(z))
        return {'told': told, 'names': names, 'fields': fields, 'asks': (q, torch.stack([x.asks[0] for x in batch]), torch.stack([x.asks[1] for x in batch])), 'cuts': cuts}

    def pointed(self, batch, which, asking, answering, seeks, bias):
        """Of names or fields: how much each piece of the note belongs to one."""
        rows, first = [], 0
        for i, x in enumerate(batch):
            rows += [(i, first + c, k, pieces) for c, k, pieces in getattr(x, which)]
            first += len(x.clauses)
        if not rows:
            return None
        what = [r[2] for r in rows]
        seek = asking[[r[1] for r in rows]] + seeks[what]
        z = (answering[[r[0] for r in rows]] * seek[:, None]).sum(2) / SEEK ** 0.5 + bias[what][:, None]
        is_, counts = torch.zeros_like(z), torch.zeros_like(z)
        for k, (i, _, _, pieces) in enumerate(rows):
            is_[k, pieces], counts[k, :len(batch[i].ids)] = 1, 1
        return z, is_, counts
