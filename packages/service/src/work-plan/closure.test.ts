import { describe, expect, test } from 'vitest';
import { back, operation } from '../testing/tiny-operations.ts';
import { leastClosure } from './closure.ts';

const nothingDone = (_id: string): boolean => false;

const family = (...operations: ReturnType<typeof operation>[]) =>
  new Map(operations.map((one) => [one.id, one]));

const membersOf = (wanted: string, operations: ReturnType<typeof family>, isSettled = nothingDone) =>
  [...leastClosure([[[wanted]]], operations, isSettled).members].sort();

describe('the least that stands in the way', () => {
  const long = { minutes: { hands: 9, waiting: 0 } };

  test('is everything an operation comes after, and nothing else', () => {
    const operations = family(
      operation('a'),
      operation('b', { after: [['a']] }),
      operation('c', { after: [['b']] }),
      operation('other'),
    );
    expect(membersOf('c', operations)).toEqual(['a', 'b', 'c']);
  });

  test('takes the shorter of two ways, counting what it takes to put back', () => {
    const operations = family(
      operation('quick-off', { back: back(20) }),
      operation('slow-off', { ...long, back: back(1) }),
      operation('x', { after: [['quick-off'], ['slow-off']] }),
    );
    expect(membersOf('x', operations)).toEqual(['slow-off', 'x']);
  });

  test('takes the longer way when something else needs it anyway', () => {
    const operations = family(
      operation('quick'),
      operation('slow', long),
      operation('x', { after: [['quick'], ['slow']] }),
      operation('y', { after: [['slow']] }),
    );
    const { members, minutes } = leastClosure([[['x']], [['y']]], operations, nothingDone);
    expect([...members].sort()).toEqual(['slow', 'x', 'y']);
    expect(minutes).toBe(13);
  });

  test('counts nothing for what is off already', () => {
    const operations = family(
      operation('quick'),
      operation('slow', long),
      operation('x', { after: [['quick'], ['slow']] }),
    );
    expect(membersOf('x', operations, (id) => id === 'slow')).toEqual(['x']);
  });

  test('passes over a way that the variant does not have', () => {
    const operations = family(operation('b', long), operation('x', { after: [['missing'], ['b']] }));
    expect(membersOf('x', operations)).toEqual(['b', 'x']);
  });

  test('takes the way that does not lead back to itself', () => {
    const operations = family(
      operation('c', long),
      operation('b', { after: [['a']] }),
      operation('a', { after: [['b'], ['c']] }),
    );
    expect(membersOf('b', operations)).toEqual(['a', 'b', 'c']);
  });

  test('throws when operations wait for one another whatever is chosen', () => {
    const operations = family(operation('a', { after: [['b']] }), operation('b', { after: [['a']] }));
    expect(() => membersOf('a', operations)).toThrow('operations-wait-for-one-another');
  });
});
