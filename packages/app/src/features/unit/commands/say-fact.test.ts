import { type Draft, draftsOfVisit, fold } from '@brinewright/journal';
import type { Visit } from '@brinewright/service';
import { shippedEquipment } from '@brinewright/service/testing';
import { describe, expect, it } from 'vitest';
import { speechFor } from '../../../engine/speech.ts';
import { bareVisit, demoVisit, english, now, spanish } from '../../../engine/testing/made-of-visit.ts';
import { testStream, writtenEntries } from '../../../engine/testing/written-entries.ts';
import { unitMade } from '../../../engine/unit-made.ts';
import { type UnitView, unitView } from '../../../engine/views/unit-view.ts';
import { sayFact, type TypedFact } from './say-fact.ts';

const equipment = shippedEquipment();

const seen = (visit: Visit, more: readonly Draft[] = [], reader = english) => {
  const entries = writtenEntries([...draftsOfVisit(visit, { stream: testStream }), ...more]);
  const site = fold(entries);
  const made = unitMade(
    { stream: testStream, folded: site },
    visit.subject,
    equipment,
    speechFor(reader),
    now,
  );
  if (made === undefined) throw new Error(visit.id);
  return { view: unitView(made), site, made };
};

const factIn = (view: UnitView, key: string) => {
  const fact = view.groups.flatMap(({ facts }) => facts).find((one) => one.key === key);
  if (fact === undefined) throw new Error(key);
  return fact;
};

const typed = (figure: string, unit = '', how: TypedFact['how'] = 'measured'): TypedFact => ({
  figure,
  unit,
  how,
});

/** Says one fact of a visit's unit and gives what is seen afterwards. */
const after = (visit: Visit, key: string, what: TypedFact) => {
  const place = { stream: testStream, conditioner: visit.subject };
  const drafts = sayFact(place, factIn(seen(visit).view, key), what);
  return { drafts, ...seen(visit, drafts) };
};

const laundry = demoVisit('laundry-slow');

describe('a unit as it is known', () => {
  const { view } = seen(laundry);

  it('says of each value how it is known', () => {
    expect(factIn(view, 'media.depth')).toMatchObject({ value: '34\u00a0in', how: { id: 'measured' } });
    expect(factIn(view, 'tank.diameter').how?.id).toBe('read');
    expect(factIn(view, 'demand.daily').how?.id).toBe('told');
    expect(factIn(view, 'water.iron').u).toBe('±\u00a00.03\u00a0mg/L');
  });

  it('names the controls that are fitted by their words', () => {
    expect(factIn(view, 'fitted.refill').value).not.toBe('r1');
  });

  it('leaves what nobody has said empty, with a form for it', () => {
    expect(factIn(view, 'tank.girth').value).toBeUndefined();
    expect(factIn(view, 'tank.girth').form).toMatchObject({
      kind: 'quantity',
      quantity: 'length',
      unit: 'in',
    });
  });

  it('tells the build with how sure it is, and its history', () => {
    expect(view.build.length).toBeGreaterThan(3);
    expect(view.history.map(({ title }) => title)).toEqual(['24 Nov 2026, Ines Marlow']);
    expect(view.due).toContain('A visit is still open.');
  });
});

describe('a value said anew', () => {
  it('stands in place of the old one, as it was typed', () => {
    const { view, site } = after(laundry, 'tank.diameter', typed('14', 'in'));
    expect(site.setAside).toEqual([]);
    expect(factIn(view, 'tank.diameter')).toMatchObject({ value: '14\u00a0in', how: { id: 'measured' } });
    expect(factIn(view, 'tank.height').value).toBe('60\u00a0in');
  });

  it('of a layer of the bed leaves the rest of the bed as it was', () => {
    const { view } = after(laundry, 'media.free', typed('20.5', 'in'));
    expect(factIn(view, 'media.free').value).toBe('20.5\u00a0in');
    expect(factIn(view, 'media.depth').value).toBe('34\u00a0in');
    expect(factIn(view, 'media.age').value).toMatch(/^4/u);
  });

  it('of the water is a new analysis of today, with the rest as it was read', () => {
    const { view, site } = after(laundry, 'water.hardness', typed('21', 'gpg'));
    expect(site.setAside).toEqual([]);
    expect(site.water.map(({ date }) => date)).toEqual(['2006-05-15', '2026-11-25']);
    expect(factIn(view, 'water.hardness')).toMatchObject({ value: '21\u00a0gpg', how: { id: 'measured' } });
    expect(factIn(view, 'water.calcium').value).toBe('100\u00a0mg/L');
  });

  it.each([
    ['demand.daily', typed('700', 'gal', 'told'), '700\u00a0gal'],
    ['supply.pressure', typed('55', 'psi'), '55\u00a0psi'],
    ['supply.drainPipe', typed('3/4', 'in'), '¾\u00a0in'],
    ['prices.salt', typed('0.21', 'per lb'), undefined],
    ['fitted.refill', typed('r2'), undefined],
    ['name', typed('Softener 2'), 'Softener 2'],
    ['kind', typed('filter'), 'filter'],
    ['salt', typed('potassium'), undefined],
  ] as const)('%s is taken by the fold', (key, what, value) => {
    const { view, site, drafts } = after(laundry, key, what);
    expect(drafts.length).toBe(1);
    expect(site.setAside).toEqual([]);
    if (value !== undefined) expect(factIn(view, key).value).toBe(value);
  });

  it('leaves the other prices as they were', () => {
    const { site } = after(laundry, 'prices.salt', typed('0.21', 'per lb'));
    expect(site.site?.prices?.sewer?.as).toBe('11 per 1000 gal');
  });

  it('is not said where it cannot be read', () => {
    const place = { stream: testStream, conditioner: 's1' };
    const { view } = seen(laundry);
    expect(sayFact(place, factIn(view, 'tank.girth'), typed('about a yard', 'in'))).toEqual([]);
    expect(sayFact(place, factIn(view, 'tank.girth'), typed(' ', 'in'))).toEqual([]);
  });
});

describe('a unit that is to be described later', () => {
  it('gets its program from what is added piece by piece, without a definition', () => {
    const steps = [
      ['water.hardness', typed('20', 'gpg')],
      ['tank.girth', typed('50.3', 'in')],
      ['tank.wall', typed('0.25', 'in')],
      ['media.medium', typed('gel-cation')],
      ['media.depth', typed('34', 'in')],
      ['media.free', typed('20', 'in')],
      ['measured.backwash', typed('6.5', 'gpm')],
      ['measured.draw', typed('0.7', 'gpm')],
      ['measured.slow-rinse', typed('1.4', 'gpm')],
      ['measured.refill', typed('0.97', 'gpm')],
      ['demand.daily', typed('800', 'gal', 'told')],
      ['controller.holds', typed('backwash,brine,fast-rinse,refill')],
      ['controller.starts', typed('metered')],
      ['controller.times', typed('1 min to 99 min by 1 min')],
    ] as const;
    const place = { stream: testStream, conditioner: 'u1' };
    const drafts: Draft[] = [];
    for (const [key, what] of steps)
      drafts.push(...sayFact(place, factIn(seen(bareVisit, drafts).view, key), what));
    const { view, site, made } = seen(bareVisit, drafts);
    expect(site.setAside).toEqual([]);
    expect(view.gaps.filter((gap) => !gap.startsWith('Coldest') && !gap.startsWith('Age'))).toEqual([]);
    const { program } = made.assessment.stages;
    expect(program.state).toBe('done');
    expect(made.assessment.figures['program.set.refill']).toBeDefined();
  });

  it('is shown in Spanish without a hole', () => {
    const { view } = seen(bareVisit, [], spanish);
    expect(JSON.stringify(view)).not.toMatch(/‹/u);
    expect(view.family).toBe('Sin describir');
  });
});

it('looks at a unit whose definitions are not here', () => {
  const gone = {
    ...laundry,
    conditioners: laundry.conditioners.map((one) => ({ ...one, family: 'never-heard' })),
  };
  const { view } = seen(gone);
  expect(view.family).toContain('never-heard');
  expect(factIn(view, 'media.depth').value).toBe('34\u00a0in');
});
