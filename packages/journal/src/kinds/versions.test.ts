import { expect, it } from 'vitest';
import { Desk } from '../testing/desk.ts';
import { readPayload } from './read-payload.ts';
import { kindNow, newestVersion, type Upcasts, upcast } from './versions.ts';

/** As if readings had once been a number in litres a minute, then a text, and only then what they are now. */
const steps: Upcasts = {
  'visit-noted': [(payload) => ({ note: String(payload) }), (payload) => ({ ...Object(payload) })],
};

it('an old payload goes through every step to the newest version', () => {
  expect(newestVersion('visit-noted', steps)).toBe(3);
  expect(upcast('visit-noted', 1, 7, steps)).toEqual({ note: '7' });
  expect(upcast('visit-noted', 3, { note: 'x' }, steps)).toEqual({ note: 'x' });
});

it('every version up to the newest is read, the next one is newer', () => {
  const desk = new Desk(1);
  const about = { visit: 'v1' };
  const states = [1, 2, 3, 4].map((version) => {
    const payload = version === 1 ? 'door code' : { note: 'door code' };
    const entry = desk.writeKind(`visit-noted/${version}`, payload, { about });
    return readPayload(entry, payload, steps).state;
  });
  expect(states).toEqual(['read', 'read', 'read', 'newer']);
});

it('entries are written in the newest version', () => {
  expect(kindNow('visit-noted')).toBe('visit-noted/1');
});
