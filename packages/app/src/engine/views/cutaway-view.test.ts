import { describe, expect, it } from 'vitest';
import { bareVisit, demoVisit, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { type CutChoice, cutStops, partOfCut } from './cutaway/address.ts';
import { type CutawayView, cutawayView } from './cutaway-view.ts';

const laundry = madeOfDemo('laundry-fast');

const drawn = (choice: CutChoice, made = laundry): CutawayView => {
  const view = cutawayView(made, partOfCut(choice));
  if (view.state === 'none') throw new Error(view.why);
  return view;
};

describe('the cut through the valve', () => {
  it.each(cutStops)('is drawn at %s, with all that passes told in sentences', (stop) => {
    const view = drawn({ stop });
    expect(view.drawings.map(({ svg }) => svg.startsWith('<svg xmlns'))).toEqual([true, true, true, true]);
    expect(view.twin.length).toBeGreaterThan(1);
    expect(view.says.join()).not.toMatch(/‹/u);
  });

  it('tells drawing brine and rinsing apart at the same stop', () => {
    expect(drawn({ stop: 'brine' }).says).toContain('Brine comes from the injector to the tank top.');
    expect(drawn({ stop: 'slow-rinse' }).says).toContain(
      'Raw water comes through the injector to the tank top.',
    );
  });

  it('goes on from each stop to the next and begins again after the last', () => {
    expect(cutStops.map((stop) => drawn({ stop }).next.id)).toEqual([...cutStops.slice(1), 'service']);
  });

  it('is drawn for each width, in sizes that grow with the text', () => {
    const { drawings } = drawn({});
    for (const { width, svg } of drawings) expect(svg).toContain(`width="${width / 16}rem"`);
  });

  it('begins in service; with a torn seal, where the tear shows', () => {
    expect(drawn({}).stop).toBe('service');
    const { seals } = drawn({});
    for (const { number, showsAt } of seals)
      if (showsAt !== undefined) expect(drawn({ torn: number }).title).toBe(showsAt);
  });
});

describe('a torn seal', () => {
  it('says what it lets through, at the stops where it does', () => {
    const leaking = drawn({ stop: 'service' }).seals.filter(({ leaksHere }) => leaksHere);
    expect(leaking.length).toBeGreaterThan(0);
    for (const { number } of leaking)
      expect(drawn({ stop: 'service', torn: number }).says[0]).toMatch(/^Seal \d is torn\. .* leaks /u);
  });

  it('is no seal of this valve: nothing is torn', () => {
    expect(drawn({ torn: 99 }).torn).toBeUndefined();
  });
});

describe('another piston in the same body', () => {
  it('joins other ports, and is told by the build it is made for', () => {
    const right = drawn({ stop: 'backwash' });
    const other = right.pistons.find(({ id }) => id === 'shut-outlet');
    expect(other?.name).toContain('shut-outlet');
    const wrong = drawn({ stop: 'backwash', piston: 'shut-outlet' });
    expect(wrong.says).not.toEqual(right.says);
    expect(wrong.pistons.filter(({ isFitted }) => isFitted).map(({ id }) => id)).toEqual(['shut-outlet']);
  });

  it('is offered without its sleeve only where the build has one', () => {
    expect(drawn({}).pistons.some(({ id }) => id === 'no-sleeve')).toBe(false);
    const visit = demoVisit('laundry-fast');
    const shut = {
      ...visit,
      answers: [],
      conditioners: visit.conditioners.map((one) => ({ ...one, believed: { regeneration: 'shut-outlet' } })),
    };
    const view = drawn({}, madeOf(shut));
    const isShut = view.build.includes('shut-outlet');
    expect(view.pistons.some(({ id }) => id === 'no-sleeve')).toBe(isShut);
  });
});

describe('where there is no bore to cut', () => {
  it('says so for a unit that nobody has described', () => {
    const view = cutawayView(madeOf(bareVisit));
    expect(view.state).toBe('none');
    expect('why' in view && view.why).toMatch(/\w/u);
  });

  it('says that the definitions are not here', () => {
    const visit = demoVisit('laundry-fast');
    const gone = {
      ...visit,
      conditioners: visit.conditioners.map((one) => ({ ...one, family: 'never-heard' })),
    };
    const view = cutawayView(madeOf(gone, spanish));
    expect('why' in view && view.why).toContain('definiciones');
  });
});
