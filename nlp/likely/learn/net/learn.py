"""
Learns the net that reads beside the rules, and writes net.onnx, pieces.txt and heads.json into nlp/likely/net.

    npm run learn:labels -- LABELS.jsonl
    pip install torch==2.13.0 transformers==5.24.0 onnx==1.23.2 onnxruntime==1.32.0
    python3 nlp/likely/learn/net/learn.py LABELS.jsonl ENCODER [--epochs N] [--further] [--hold FILE,FILE]

ENCODER is a folder with all-MiniLM-L6-v2 (Apache 2.0) as its authors publish it. `--hold`: notes of these files are not learned from, and what the net makes of them is printed.
`--further`: the net as it stands is taught further, at a lower rate, where only notes were added.
The program itself needs none of this: it runs the files written. With two cores an epoch over 70,000 notes takes some 20 minutes (10 on a processor with wide sums), after ten to lay them out.
"""
import argparse
import json
import math
import random
import re
import tempfile
from copy import copy, deepcopy
from pathlib import Path

import onnx
import torch
from onnxruntime.quantization import QuantType, quantize_dynamic
from onnxruntime.quantization.shape_inference import quant_pre_process
from torch import nn
from torch.nn.functional import binary_cross_entropy_with_logits
from torch.optim.swa_utils import AveragedModel, get_ema_multi_avg_fn
from transformers import AutoTokenizer
from examples import examples, joined
from model import Net
from restore import restore
from sorts import ASKS, ATTRIBUTES, FIELDS, SORTS
from spots import SPOTS

BATCH, RATE, RATE_OF_HEADS, WARM = 32, 1.5e-4, 1e-3, 0.06
FURTHER = 0.6  # of these rates, for a net that is taught further
WEIGHTS = {'told': 1, 'names': 0.4, 'fields': 0.5, 'asks': 0.5, 'cuts': 1, 'spots': 3}
SMOOTHED, EVERY = 0.99, 8  # what is written is a running mean of the weights, over some hundreds of steps: it errs less than the last step (Izmailov et al. 2018, "Averaging weights leads to wider optima")
MASKED, HIDDEN, MASK = 0.3, 0.1, 103  # of so many notes, so many pieces are hidden (by the encoder's [MASK]), so that the others must tell
JOINED, LONGEST = 0.1, 90  # of the notes without stops, so many are joined with another, up to so many pieces
COMMON = 15_000  # the vocabulary is in the order of how common its pieces are; of those that no note has, these are kept
FOLDER = Path(__file__).resolve().parents[2] / 'net'


def loss(result):
    z, is_, counts = result
    return (binary_cross_entropy_with_logits(z, is_, reduction='none') * counts).sum() / len(z)


def hidden(x):
    """A note with some of its pieces hidden."""
    y, own = copy(x), set(x.own)
    y.ids = [MASK if i in own and random.random() < HIDDEN else p for i, p in enumerate(x.ids)]
    return y


def batches(pairs):
    """Notes of like length together, in an order of their own each time; of a note that has stops, now as written, now without them."""
    order, out = [random.choice(pair) or pair[0] for pair in random.sample(pairs, len(pairs))], []
    bare = [i for i, x in enumerate(order) if x.bare and not any(x.types)]
    for i, j in zip(bare[::2], bare[1::2]):
        if random.random() < JOINED and len(order[i].ids) + len(order[j].ids) < LONGEST:
            order[i] = joined(order[i], order[j])
    order = [hidden(x) if random.random() < MASKED else x for x in order]
    for i in range(0, len(order), BATCH * 20):
        near = sorted(order[i:i + BATCH * 20], key=lambda x: len(x.ids))
        out += [near[j:j + BATCH] for j in range(0, len(near), BATCH)]
    return random.sample(out, len(out))


def learn(model, notes, epochs, after, share=1.0):
    heads = [p for n, p in model.named_parameters() if not n.startswith('encoder.')]
    rates = RATE * share, RATE_OF_HEADS * share
    optimizer = torch.optim.AdamW([{'params': model.encoder.parameters()}, {'params': heads}], lr=RATE, weight_decay=0.01, fused=True)
    mean = AveragedModel(model, multi_avg_fn=get_ema_multi_avg_fn(SMOOTHED))
    total, step = epochs * math.ceil(len(notes) / BATCH), 0
    short = torch.cpu._is_avx512_bf16_supported()  # 16-bit sums are quicker where the processor has them, and slower elsewhere
    model.train()
    for epoch in range(epochs):
        for batch in batches(notes):
            for group, rate in zip(optimizer.param_groups, rates):
                group['lr'] = rate * min(1, step / (WARM * total)) * max(0.02, 1 - step / total)
            with torch.autocast('cpu', dtype=torch.bfloat16, enabled=short):
                said = model(batch)
            error = sum(WEIGHTS[k] * loss(x) for k, x in said.items() if x)
            optimizer.zero_grad()
            error.backward()
            nn.utils.clip_grad_norm_(model.parameters(), 1.0)
            optimizer.step()
            step += 1
            if step % EVERY == 0:
                mean.update_parameters(model)
            if step % 200 == 0:
                print(f'{step} of {total}: {error.item():.3f}', flush=True)
        after(epoch, mean.module)


@torch.no_grad()
def report(model, pairs):
    """F1 of clauses' sorts, of attributes, of the pieces of names and fields, of questions, and of where clauses begin in notes without their stops, at even odds."""
    model.eval()
    sums = {}
    def count(what, z, is_, counts):
        said, sum_ = (z > 0) * counts, sums.setdefault(what, [0, 0, 0])
        for k, v in enumerate(((said * is_).sum(), said.sum(), (is_ * counts).sum())):
            sum_[k] += v.item()
    for spoken in (False, True):
        notes = [pair[spoken] for pair in pairs if pair[spoken]]
        for i in range(0, len(notes), BATCH):
            for what, x in model(notes[i:i + BATCH]).items():
                if x and what == 'told':
                    count('sorts', *(y[:, :len(SORTS)] for y in x))
                    count('attributes', *(y[:, len(SORTS):] for y in x))
                elif x and spoken == (what == 'cuts'):
                    count(what, *x)
                    if what == 'spots':
                        for k, spot in enumerate(SPOTS):
                            count('.named' if spot.startswith('of ') else '.asked' if spot.startswith('asked ') else f'.{spot}', *(y[:, k:k + 1] for y in x))
    model.train()
    return ', '.join(f'{k} {2 * h / max(1, s + g):.4f}' for k, (h, s, g) in sums.items())


class Rows(nn.Module):
    """The net as the program runs it: one note, a row for each piece."""

    def __init__(self, model):
        super().__init__()
        self.model = model

    def forward(self, ids, types):
        return self.model.pieces(ids, types)[0]


def write(model, tokenizer, notes):
    """8-bit weights by dynamic quantisation; of the vocabulary, what the notes have and the commonest pieces."""
    model = deepcopy(model).eval()
    pieces = {i: p for p, i in tokenizer.get_vocab().items()}
    seen = {i for x in notes for i in x.ids}
    keep = [i for i in range(len(pieces)) if i in seen or pieces[i] in ('[UNK]', '[CLS]', '[SEP]') or re.fullmatch('(##)?[a-z0-9]+', pieces[i]) and i < COMMON or re.fullmatch('(##)?[!-~]', pieces[i])]
    words = model.encoder.embeddings
    words.word_embeddings = nn.Embedding.from_pretrained(words.word_embeddings.weight.data[keep].clone())
    with tempfile.TemporaryDirectory() as folder:
        full, ready = f'{folder}/full.onnx', f'{folder}/ready.onnx'
        torch.onnx.export(Rows(model), (torch.tensor([[0, 1, 2, 3]]), torch.tensor([[1, 1, 0, 0]])), full, input_names=['ids', 'types'], output_names=['told'],
                          dynamic_axes={'ids': {1: 'pieces'}, 'types': {1: 'pieces'}, 'told': {0: 'pieces'}}, opset_version=17, dynamo=False)
        quant_pre_process(full, ready, skip_symbolic_shape=True)
        quantize_dynamic(ready, FOLDER / 'net.onnx', weight_type=QuantType.QInt8, per_channel=True, op_types_to_quantize=['MatMul', 'Gather', 'Gemm'], extra_options={'MatMulConstBOnly': True})
    onnx.checker.check_model(onnx.load(FOLDER / 'net.onnx'))
    (FOLDER / 'pieces.txt').write_text('\n'.join(pieces[i] for i in keep) + '\n')
    rounded = lambda t: [round(x, 4) for x in t.tolist()]
    (FOLDER / 'heads.json').write_text(json.dumps({'sorts': SORTS, 'attributes': ATTRIBUTES, 'asks': ASKS, 'spots': SPOTS, 'bias': rounded(model.bias.data),
                                                   'seeks': [rounded(r) for r in model.seeks.data], 'found': round(model.found.item(), 4),
                                                   'fields': FIELDS, 'fieldSeeks': [rounded(r) for r in model.fields.data], 'held': rounded(model.held.data)}) + '\n')


def main():
    args = argparse.ArgumentParser()
    args.add_argument('labels')
    args.add_argument('encoder')
    args.add_argument('--epochs', type=int, default=4)
    args.add_argument('--further', action='store_true')
    args.add_argument('--hold', default='')
    args = args.parse_args()
    torch.manual_seed(1)
    random.seed(1)
    tokenizer = AutoTokenizer.from_pretrained(args.encoder)
    notes, held = examples(args.labels, tokenizer, set(args.hold.split(',')))
    print(f'{len(notes)} notes to learn from, {len(held)} held back', flush=True)
    model = Net(args.encoder)
    if args.further:
        restore(model, FOLDER, tokenizer)
    def after(epoch, model):
        if held:
            print(f'after epoch {epoch + 1}: {report(model, held)}', flush=True)
        write(model, tokenizer, [x for pair in notes + held for x in pair if x])
    learn(model, notes, args.epochs, after, FURTHER if args.further else 1.0)


if __name__ == '__main__':
    main()
