import { fold } from '@brinewright/journal';
import { describe, expect, test } from 'vitest';
import { testStream, writtenEntries } from '../../../engine/testing/written-entries.ts';
import { beginVisit } from './begin-visit.ts';

const begun = { visit: 'v1', date: '2026-11-25', by: 'Ines Marlow', definitions: 'abc' };

describe('beginning a visit', () => {
  test('a place and a unit nobody knows fold to a visit that says what little is known', () => {
    const drafts = beginVisit(
      { stream: testStream, name: ' Quarry Lane Kitchen ', isNew: true },
      { id: 'u1', described: { family: 'undescribed', kind: 'softener', name: '' } },
      begun,
    );
    const site = fold(writtenEntries(drafts));
    expect(site.setAside).toEqual([]);
    expect(site.visits.map(({ visit }) => visit)).toMatchObject([
      {
        id: 'v1',
        site: { name: 'Quarry Lane Kitchen' },
        subject: 'u1',
        date: '2026-11-25',
        by: { name: 'Ines Marlow' },
        conditioners: [{ id: 'u1', family: 'undescribed', kind: 'softener' }],
      },
    ]);
  });

  test('of a known place and unit nothing is said again', () => {
    const drafts = beginVisit({ stream: testStream, name: 'Known', isNew: false }, { id: 'u1' }, begun);
    expect(drafts.map(({ kind }) => kind)).toEqual(['visit-started/1']);
  });
});
