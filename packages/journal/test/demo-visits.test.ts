import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { assess, parseVisit, type Visit } from '@brinewright/service';
import { shippedEquipment } from '@brinewright/service/testing';
import { describe, expect, it } from 'vitest';
import { fold, visitOf } from '../src/fold/fold.ts';
import { draftsOfVisit } from '../src/import/drafts-of-visit.ts';
import { Desk, testStream } from '../src/testing/desk.ts';
import { plain, recorded } from '../src/testing/plain-visit.ts';

const demo = join(import.meta.dirname, '../../../demo');
const demoVisit = (file: string): Visit => {
  const read = parseVisit(file, readFileSync(join(demo, file), 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value;
};

const folded = (visit: Visit): Visit => {
  const desk = new Desk(1);
  recorded(desk, draftsOfVisit(visit, { stream: testStream }));
  const back = visitOf(fold(desk.entries), visit.id);
  if (back === undefined) throw new Error(visit.id);
  return back;
};

const withoutEntries = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, held) => (key === 'entry' ? undefined : held)));

describe.each(readdirSync(demo).filter((file) => file.endsWith('.yaml')))('the demo visit %s', (file) => {
  const visit = demoVisit(file);

  it('comes back out of its entries as it was written', () => {
    expect(plain(folded(visit))).toEqual(plain(visit));
  });

  it('is assessed alike, written or folded', () => {
    const options = { now: '2026-11-25T12:00:00Z', effort: 'quick' as const };
    const equipment = shippedEquipment();
    const [written, back] = [visit, folded(visit)].map((one) => assess(one, equipment, options));
    expect(withoutEntries(back)).toEqual(withoutEntries(written));
  });
});

it('says of a site that is known only what differs', () => {
  const first = demoVisit('laundry-fast.yaml');
  const desk = new Desk(1);
  recorded(desk, draftsOfVisit(first, { stream: testStream }));
  const known = fold(desk.entries);
  const second: Visit = { ...first, id: 'next', site: { ...first.site, address: '5 Quay Row' } };
  const drafts = draftsOfVisit(second, { stream: testStream, known });
  const ofSite = drafts.filter(({ about }) => about.visit === undefined);
  expect(ofSite.map(({ kind, payload }) => [kind, payload])).toEqual([
    ['site-described/1', { address: '5 Quay Row' }],
  ]);
  recorded(desk, drafts);
  expect(fold(desk.entries).visits.map(({ id }) => id)).toEqual(['laundry-fast', 'next']);
});
