import { describe, expect, test } from 'vitest';
import { bareVisit, english, madeOf } from '../../../engine/testing/made-of-visit.ts';
import { testStream } from '../../../engine/testing/written-entries.ts';
import { justAReading } from './just-a-reading.ts';

const of = {
  stream: testStream,
  conditioner: 'u1',
  visit: 'quick',
  date: '2026-11-25',
  by: 'Ines Marlow',
  note: 'Reading only',
  at: '2026-11-25T09:00:00Z',
};

describe('just a reading', () => {
  test('it folds to a visit that is over, with what was measured and nothing else', () => {
    const drafts = justAReading(of, { raw: undefined, outlet: '0.5 gpg', salt: 'bridge' });
    const visits = madeOf(bareVisit, english, drafts).site.visits;
    const quick = visits.find(({ id }) => id === 'quick');
    expect(quick?.handedOver).toBeDefined();
    expect(quick?.visit.readings).toMatchObject([
      { test: 'hardness-outlet', value: '0.5 gpg', conditioner: 'u1' },
      { test: 'salt-look', state: 'bridge' },
    ]);
  });

  test('the tests and outcomes it names are those of the definitions', () => {
    const { family } = madeOf(bareVisit);
    const salt = family?.tests.find(({ id }) => id === 'salt-look');
    expect(family?.tests.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['hardness-raw', 'hardness-outlet']),
    );
    expect(salt?.outcomes.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['fine', 'empty', 'bridge', 'mud']),
    );
  });
});
