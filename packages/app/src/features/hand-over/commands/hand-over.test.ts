import { draftsOfVisit, type Entry, kindNames, kindNow } from '@brinewright/journal';
import { describe, expect, it } from 'vitest';
import {
  demoVisit,
  english,
  madeOf,
  madeOfDemo,
  madeOfEntries,
} from '../../../engine/testing/made-of-visit.ts';
import { testStream, writtenEntries } from '../../../engine/testing/written-entries.ts';
import { handOverView } from '../../../engine/views/hand-over-view.ts';
import { aboutVisit } from '../../../offline/draft-about.ts';
import { adviceGiven, handOver, sayAgain } from './hand-over.ts';

const about = { stream: testStream, visit: 'laundry-slow', conditioner: 's1' };
const at = '2026-11-25T10:41:00Z';
const told = { to: 'R. Haldane', said: 'Add salt on Friday.', signed: 'R. Haldane' };

it('writes each kind in the version that the journal holds for the newest', () => {
  expect(kindNames.map((name) => aboutVisit(about, name, {}).kind)).toEqual(kindNames.map(kindNow));
});

describe('a visit handed over', () => {
  const { shown } = handOverView(madeOfDemo('laundry-slow'));
  const made = madeOfDemo('laundry-slow', english, handOver(about, told, shown, at));
  const view = handOverView(made);

  it('is signed, and says to whom and what', () => {
    expect(made.site.setAside).toEqual([]);
    expect(view.signatures).toEqual([{ name: 'R. Haldane', at: '10:41' }]);
    expect(view.handed).toMatchObject({
      to: 'R. Haldane',
      said: 'Add salt on Friday.',
      when: '25 Nov 2026, 10:41',
    });
  });

  it('keeps the figures that were shown, with what computed them', () => {
    expect(made.folded.handedOver?.shown).toEqual(shown);
    expect(shown.engine).toBe(made.assessment.engine);
    expect(shown.figures['program.set.refill']).toBe('32\u00a0min');
    expect(view.handed?.figures.find(({ text }) => text === '32\u00a0min')?.title).toBe('Refill time to set');
    expect(view.handed?.isOtherNow).toBe(false);
  });

  it('shows a newer opinion beside a kept figure, and only where it differs', () => {
    const older = {
      ...shown,
      engine: 'brinewright/0.0.9',
      figures: { ...shown.figures, 'program.set.refill': '30\u00a0min' },
    };
    const later = handOverView(madeOfDemo('laundry-slow', english, handOver(about, told, older, at)));
    expect(later.handed?.figures.filter(({ now }) => now !== undefined)).toEqual([
      { id: 'program.set.refill', title: 'Refill time to set', text: '30\u00a0min', now: '32\u00a0min' },
    ]);
  });

  it('is not taken for another where only the units of the reader are others', () => {
    const older = { ...shown, engine: 'brinewright/0.0.9' };
    const reader = { language: 'es', system: 'metric' } as const;
    expect(
      handOverView(madeOfDemo('laundry-slow', reader, handOver(about, told, older, at))).handed?.isOtherNow,
    ).toBe(false);
  });

  it('needs neither a name nor a signature', () => {
    const drafts = handOver(about, { to: ' ', said: '', signed: '' }, shown, at);
    expect(drafts.map(({ kind }) => kind)).toEqual(['handed-over/1']);
  });
});

it('keeps what stood on a paper that was given', () => {
  const { shown } = handOverView(madeOfDemo('laundry-slow'));
  const made = madeOfDemo('laundry-slow', english, adviceGiven(about, shown));
  expect(made.folded.advice.map((one) => one.shown)).toEqual([shown]);
});

describe('two who said different things', () => {
  /** Two devices set the refill without knowing of one another. */
  const rivalling = (): readonly Entry[] => {
    const entries = writtenEntries(draftsOfVisit(demoVisit('laundry-slow'), { stream: testStream }));
    const last = entries.at(-1);
    if (last === undefined) throw new Error('none');
    const said = (number: number, payload: Entry['payload']): Entry => ({
      ...last,
      id: `00000000-0000-7000-8000-0000000${number}`,
      device: `00000000-0000-7000-8000-0000000${number}`,
      seq: 1,
      lamport: entries.length + number,
      kind: 'setting-set/1',
      payload,
      author: `Hand ${number}`,
      seen: { [last.device]: entries.length },
      about: { visit: 'laundry-slow' },
    });
    return [...entries, said(10_001, { refill: '31 min' }), said(10_002, { refill: '32 min' })];
  };

  it('are both shown, with who said which', () => {
    const { remarks } = handOverView(madeOfEntries(rivalling(), 'laundry-slow', english));
    expect(
      remarks.rivals.map(({ what, values }) => [what, values.map(({ text, who }) => [text, who])]),
    ).toEqual([
      [
        'Refill',
        [
          ['32 min', 'Hand 10002'],
          ['31 min', 'Hand 10001'],
        ],
      ],
    ]);
  });

  it('are settled by writing one of them again', () => {
    const before = rivalling();
    const [rival] = handOverView(madeOfEntries(before, 'laundry-slow', english)).remarks.rivals;
    const again = rival?.values[1]?.again;
    if (again === undefined) throw new Error('cannot be written again');
    const [draft] = sayAgain(about, again);
    const own = before[0];
    if (draft === undefined || own === undefined) throw new Error('none');
    const seen = Object.fromEntries(
      before.filter(({ device }) => device !== own.device).map(({ device }) => [device, 1]),
    );
    const count = before.filter(({ device }) => device === own.device).length;
    const settled: Entry = {
      ...own,
      ...draft,
      id: '00000000-0000-7000-8000-000000020000',
      seq: count + 1,
      lamport: 99_999,
      seen,
    };
    const made = madeOfEntries([...before, settled], 'laundry-slow', english);
    expect(handOverView(made).remarks.rivals).toEqual([]);
    expect(made.visit.settings?.set?.refill?.as).toBe('31 min');
  });
});

it('hands over a visit of which nothing is known', () => {
  const made = madeOf({
    schema: 1,
    id: 'bare',
    site: { name: 'Quarry Lane Kitchen (invented)' },
    conditioners: [{ id: 'u1', family: 'undescribed', kind: 'softener' }],
    subject: 'u1',
  });
  const view = handOverView(made);
  expect(view.found).toEqual([]);
  expect(view.open.length).toBeGreaterThan(0);
  expect(JSON.stringify(view)).not.toMatch(/‹/u);
});
