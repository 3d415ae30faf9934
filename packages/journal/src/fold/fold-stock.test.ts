import { expect, it } from 'vitest';
import { Desk, testId, testStream } from '../testing/desk.ts';
import { foldStock } from './fold-stock.ts';

const van = testId(20);
const shelf = testId(21);
const inVan = { stream: van };
const about = { visit: 'v1' };

const stocked = (): Desk => {
  const desk = new Desk(1);
  desk.write('stock-place-named', { name: 'Van 2' }, inVan);
  desk.write(
    'stock-taken',
    {
      lines: [
        { part: 'seal-kit', count: 4 },
        { part: 'piston', count: 1 },
      ],
    },
    inVan,
  );
  return desk;
};

const countsIn = (desk: Desk, place: string = van) =>
  Object.fromEntries(foldStock(place, desk.entries).lines.map(({ part, count }) => [part, count]));

it('counts from the last stock-take, with what came, went and was used in visits to any site', () => {
  const desk = stocked();
  desk.write('stock-moved', { part: 'seal-kit', count: 2, from: shelf, to: van }, { stream: shelf });
  desk.write('part-used', { part: 'seal-kit', count: 1, from: van }, { about, stream: testStream });
  desk.write('part-used', { part: 'seal-kit', count: 1, from: shelf }, { about, stream: testId(3) });
  expect(countsIn(desk)).toEqual({ piston: 1, 'seal-kit': 5 });
  expect(countsIn(desk, shelf)).toEqual({ 'seal-kit': -3 });
  expect(foldStock(shelf, desk.entries).belowZero).toEqual(['seal-kit']);
  expect(foldStock(van, desk.entries)).toMatchObject({ name: 'Van 2', belowZero: [], rivals: [] });
});

it('begins anew at a stock-take, for the parts that were counted', () => {
  const desk = stocked();
  desk.write('part-used', { part: 'piston', count: 1, from: van }, { about });
  desk.write('stock-taken', { lines: [{ part: 'seal-kit', count: 3 }] }, inVan);
  expect(countsIn(desk)).toEqual({ piston: 0, 'seal-kit': 3 });
});

it('takes a part that is said twice for one, and follows a correction', () => {
  const desk = stocked();
  desk.write('part-used', { part: 'seal-kit', count: 1, from: van }, { about });
  const { id } = desk.write('part-used', { part: 'seal-kit', count: 1, from: van }, { about });
  expect(countsIn(desk)).toMatchObject({ 'seal-kit': 3 });
  desk.write('corrected', { target: id, payload: { part: 'seal-kit', count: 2, from: van } });
  expect(countsIn(desk)).toMatchObject({ 'seal-kit': 2 });
});

it('flags two stock-takes that did not know of one another', () => {
  const first = stocked();
  const second = new Desk(2);
  second.take(first);
  first.write('stock-taken', { lines: [{ part: 'piston', count: 2 }] }, inVan);
  second.write('stock-taken', { lines: [{ part: 'piston', count: 0 }] }, inVan);
  second.take(first);
  expect(foldStock(van, second.entries).rivals).toMatchObject([
    { what: 'piston', values: [{ value: 0 }, { value: 2 }] },
  ]);
});

it('sets aside a movement from a place to itself', () => {
  const desk = stocked();
  desk.write('stock-moved', { part: 'piston', count: 1, from: van, to: van }, inVan);
  expect(foldStock(van, desk.entries).setAside).toHaveLength(1);
});
