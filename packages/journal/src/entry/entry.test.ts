import { describe, expect, it } from 'vitest';
import { Desk, testId } from '../testing/desk.ts';
import { byFoldOrder, isBefore } from './order.ts';
import { longestEntry, readEntry, tombstone } from './read-entry.ts';
import { seal } from './seal.ts';

const entry = new Desk(1).write('visit-noted', { note: 'fine' }, { about: { visit: 'v1' } });

describe('the hash of an entry (J1)', () => {
  it('is that of its canonical form, whatever the order of its keys', () => {
    const turned = Object.fromEntries(Object.entries(entry).toReversed());
    const read = readEntry({ entry: turned });
    expect(read.ok && read.sealed.hash).toBe(seal(entry).hash);
  });

  it('covers fields of a newer envelope, which are kept', () => {
    const read = readEntry({ entry: { ...entry, mood: 'calm' } });
    expect(read.ok && read.sealed.text).toContain('"mood":"calm"');
    expect(read.ok && read.sealed.hash).not.toBe(seal(entry).hash);
  });

  /** RFC 8785, section 3.2.3 and appendix B: keys by UTF-16 code unit, numbers as ECMAScript writes them. */
  it('is taken over the canonical form of the standard', () => {
    const payload = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ud83d\ude00': 'Smiley',
      '1': 'One',
      n: 1e21,
    };
    expect(seal({ ...entry, payload }).text).toContain(
      '"payload":{"\\r":"Carriage Return","1":"One","n":1e+21,"\u20ac":"Euro Sign","\ud83d\ude00":"Smiley"}',
    );
  });
});

describe('an envelope that is refused (S1)', () => {
  it.each([
    ['a lone surrogate, which has no canonical form', { ...entry, payload: '\ud800' }, 'not-json'],
    ['a lone surrogate in a key', { ...entry, payload: { '\udfff': 1 } }, 'not-json'],
    ['a number that is none', { ...entry, payload: Number.POSITIVE_INFINITY }, 'not-json'],
    ['an id in capitals', { ...entry, id: entry.id.replace(/^0/u, 'F') }, 'malformed'],
    ['a number of nothing', { ...entry, seq: 0 }, 'malformed'],
    ['a kind without version', { ...entry, kind: 'visit-noted' }, 'malformed'],
    ['a visit that climbs out of its folder', { ...entry, about: { visit: '../../etc' } }, 'malformed'],
    ['too much text', { ...entry, payload: 'x'.repeat(longestEntry) }, 'too-large'],
    ['a tombstone that does not say whose', tombstone(entry, testId(5)), 'malformed'],
    ['no entry', 'text', 'malformed'],
  ])('holds %s', (_, given, reason) => {
    expect(readEntry({ entry: given })).toMatchObject({ ok: false, reason });
  });

  it('is nested without end', () => {
    const deep = JSON.parse(`${'['.repeat(5000)}${']'.repeat(5000)}`);
    expect(readEntry({ entry: { ...entry, payload: deep } })).toMatchObject({
      ok: false,
      reason: 'not-json',
    });
  });
});

it('a tombstone keeps the hash of what it was (R1)', () => {
  const { hash } = seal(entry);
  const read = readEntry({ entry: tombstone(entry, testId(5)), hash });
  expect(read).toMatchObject({ ok: true, sealed: { hash, redacted: true } });
});

describe('order', () => {
  const first = new Desk(1);
  const second = new Desk(2);
  const a = first.write('visit-noted', { note: 'a' });
  second.take(first);
  const b = second.write('visit-noted', { note: 'b' });
  const c = first.write('visit-noted', { note: 'c' });

  it('knows what was before (J3) and what are rivals', () => {
    expect([isBefore(a, b), isBefore(b, a), isBefore(a, c), isBefore(b, c), isBefore(c, b)]).toEqual([
      true,
      false,
      true,
      false,
      false,
    ]);
    expect(isBefore({ ...a, stream: testId(9) }, b)).toBe(false);
  });

  it('is by lamport, then by device (J4)', () => {
    expect([b, c, a].toSorted(byFoldOrder)).toEqual([a, c, b]);
  });
});
