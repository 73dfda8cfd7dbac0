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

const dealt = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.map(({ sure: _, span: __, ...e }) => { const { source: ___, ...rest } = e as typeof e & { source?: string }; return rest; });

test.each([
  'Ordered a belt, 12, and two seals, 4 each, from the factor, 6 carriage.',
  'Ordered: belt 12, two seals 4 each, from the factor, 6 carriage.',
  'Ordered a belt at 12 and two seals at 4 each from the factor, 6 carriage.',
])('several things in one order, each with its own sum, the carriage once: %s', text => {
  expect(dealt(text)).toEqual([{ kind: 'order', item: 'belt', price: 12, shipping: 6 }, { kind: 'order', item: 'seals', price: 8, qty: 2 }]);
});

test('one sum for all stands with the first, and its carriage', () => {
  expect(dealt('Ordered two seals and a gasket from the factor, 18.50 plus 4 carriage.')).toEqual([{ kind: 'order', item: 'seals', price: 18.5, shipping: 4, qty: 2 }, { kind: 'order', item: 'gasket' }]);
  expect(dealt('Ordered a belt and two seals from the factor, 30.')).toEqual([{ kind: 'order', item: 'belt', price: 30 }, { kind: 'order', item: 'seals', qty: 2 }]);
});

test('one figure is a count or a sum, two may be alike', () => {
  expect(dealt('Ordered the seat, ninety, from the yard.')).toEqual([{ kind: 'order', item: 'seat', price: 90 }]);
  expect(dealt('Bought the seat, ninety, from the yard.')).toEqual([{ kind: 'bought', item: 'seat', price: 90 }]);
  expect(dealt('Bought 12 bolts from the yard, 12 quid.')).toEqual([{ kind: 'bought', item: 'bolts', price: 12, qty: 12 }]);
});

test('an amount whose unit is written short is no name', () => {
  expect(dealt('Need two clips and 4 m of hydraulic hose')).toEqual([{ kind: 'want', item: 'clips', qty: 2 }, { kind: 'want', item: 'hydraulic hose', spec: '4 m' }]);
});

test('a bare side is the other of what was named before it', () => {
  expect(dealt('Right hub needs an inner bearing, 30206, and an outer, 30204.')).toMatchObject([{ item: 'inner bearing' }, { item: 'outer bearing', spec: '30204' }]);
});

test('sent off for is ordered and no part sent away; no day was promised', () => {
  expect(dealt('Sent off for a drain cock to the fittings people, 17.50 post free, and they say the 20th.')).toEqual([{ kind: 'order', item: 'drain cock', price: 17.5, shipping: 0, expected: '2026-05-20' }]);
  expect(dealt('Took the saw blade across to the saw doctor. He would not commit himself to a day.')[0]).not.toHaveProperty('until');
});

test('a year is no figure read off', () => {
  expect(dealt('5.003 inches at the top of the bore, which for a machine of 1911 is good.').flatMap(e => ('value' in e ? [e.value] : []))).toEqual([5.003]);
});

const quoted = (text: string) => readNote(text, { at: '2026-06-09T10:00:00+00:00' }).entries.flatMap(e => (e.kind === 'quote' ? [[e.price, e.shipping]] : []));
test('carriage said once is of the offer before it', () => {
  expect(quoted('Gearbox oil seal. Nine pounds at the bearing factor. 6.40 and three pounds post from the seal people.')).toEqual([[9, undefined], [6.4, 3]]);
});
test('an hour that there is for a job is no hour spent', () => {
  expect(readNote('got twenty minutes whats quick', { at: '2026-06-09T10:00:00+00:00' }).entries).toEqual([]);
});
test('sums that stand by themselves are of the deal before them', () => {
  expect(quoted('Muffler. Mail order 19 + 8 freight; tractor store counter 24, no ship')).toEqual([[19, 8], [24, 0]]);
  expect(readNote('Collected the clutch disc from the old man in the next village. New lining riveted on, 55 euros.', { at: '2026-06-09T10:00:00+00:00' }).entries.find(e => e.kind === 'bought')).toMatchObject({ price: 55 });
  expect(readNote('Ordered the rotor bushings. Four. From the catalog. Nineteen each. Seven to ship.', { at: '2026-06-09T10:00:00+00:00' }).entries.find(e => e.kind === 'order')).toMatchObject({ shipping: 7 });
});
