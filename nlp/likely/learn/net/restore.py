"""The net as the program has it, taken up again to be taught further: its 8-bit weights as they were meant."""
import json
import re
import onnx
import torch
from onnx import numpy_helper
from sorts import ASKS, ATTRIBUTES, FIELDS, SORTS
from spots import SPOTS


def restore(model, folder, tokenizer):
    """Sets a model's weights to those of the net in a folder. What the net leaves off of the encoder's vocabulary stays as the encoder has it."""
    heads = json.loads((folder / 'heads.json').read_text())
    for known, own in (('sorts', SORTS), ('attributes', ATTRIBUTES), ('asks', ASKS), ('fields', FIELDS), ('spots', SPOTS[:len(heads['spots'])])):
        if heads[known] != own:
            raise ValueError(f'The net knows other {known} than are to be learned: teach it from the encoder.')
    graph = onnx.load(folder / 'net.onnx').graph
    held = {i.name: torch.tensor(numpy_helper.to_array(i).copy()) for i in graph.initializer}
    state = {name.removeprefix('model.'): value for name, value in held.items() if name.startswith('model.') and value.dtype == torch.float32 and not name.endswith('_scale')}
    plain = lambda name: (held[f'{name}_quantized'].float() - held[f'{name}_zero_point'].float()) * held[f'{name}_scale']
    for node in graph.node:
        if node.op_type == 'MatMulInteger':
            name = node.input[1].removesuffix('_quantized')
            state[re.sub('/', '.', re.match('/(.*)/MatMul', node.output[0])[1]) + '.weight'] = plain(name).T
    for table in ('position', 'token_type', 'word'):
        state[f'encoder.embeddings.{table}_embeddings.weight'] = plain(f'model.encoder.embeddings.{table}_embeddings.weight')
    words, number = model.state_dict()['encoder.embeddings.word_embeddings.weight'].clone(), tokenizer.get_vocab()
    for row, piece in zip(state['encoder.embeddings.word_embeddings.weight'], (folder / 'pieces.txt').read_text().splitlines()):
        words[number[piece]] = row
    state['encoder.embeddings.word_embeddings.weight'] = words
    for part in ('out.weight', 'out.bias'):  # spots are the last columns: those that are new begin as chance has them
        state[part] = torch.cat([state[part], model.state_dict()[part][len(state[part]):]])
    state |= {'bias': torch.tensor(heads['bias']), 'seeks': torch.tensor(heads['seeks']), 'found': torch.tensor(heads['found']), 'fields': torch.tensor(heads['fieldSeeks']), 'held': torch.tensor(heads['held'])}
    missing, unknown = model.load_state_dict(state, strict=False)
    if unknown or [m for m in missing if not m.endswith('position_ids')]:
        raise ValueError(f'The net does not fit the model: {missing}, {unknown}')
