import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const orders = (text: string, prior: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00', prior: [prior] }).entries.flatMap(e => (e.kind === 'order' ? [{ item: e.item, source: e.source, price: e.price, shipping: e.shipping }] : []));

test('so many at so much each', () => {
  expect(readNote('Ordered 12 clips at 4 each from the foundry.', { at: '2026-05-05T10:00:00-04:00' }).entries).toMatchObject([{ kind: 'order', item: 'clips', price: 48 }]);
});

test('so many of what a seller quoted by the piece in the note before', () => {
  expect(orders('Ordered four there.', 'Spring man asks 12 each for the tines, post 6.')).toEqual([{ item: 'tines', source: 'Spring man', price: 48, shipping: 6 }]);
});

test('an order that names only its seller is of what he quoted', () => {
  expect(orders("Ordered the foundry's.", 'Foundry wants £310 for the vaporiser, £28 carriage.')).toEqual([{ item: 'vaporiser', source: 'foundry', price: 310, shipping: 28 }]);
});
