import { formatMessage } from '@brinewright/words';
import { describe, expect, it } from 'vitest';
import { assess } from '../assess.ts';
import { laundry } from '../testing/laundry.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { type VisitDocument, visitSchema } from '../visit/schema.ts';

const equipment = shippedEquipment();

const english = { language: 'en', system: 'us' } as const;

const worked = (
  fitted: { drain: string; backwash: string | { value: string; u: string } },
  change: Partial<VisitDocument> = {},
) => {
  const rates = { draw: '0.45 gpm', 'slow-rinse': '0.85 gpm', refill: '0.5 gpm' };
  const unit = {
    fitted: { controller: 'tally', injector: 'middle', drain: fitted.drain, refill: 'r2' },
    measured: { ...rates, backwash: fitted.backwash },
  };
  const visit = visitSchema.parse(laundry(change, unit));
  const { stages } = assess(visit, equipment, { now: '2026-11-25T10:00:00Z', effort: 'quick' });
  const { program, repair, plan } = stages;
  if (program.state === 'blocked' || repair.state === 'blocked' || plan.state === 'blocked')
    throw new Error('blocked');
  const { window } = program.value;
  const operations = plan.value.steps.flatMap((step) =>
    step.kind === 'operation' ? [step.operation.id] : [],
  );
  const gate = plan.value.steps.find((step) => step.kind === 'gate');
  return { window, repair: repair.value, operations, gate };
};

const weak = { drain: 'd2', backwash: '2.2 gpm' };
const right = { drain: 'd4', backwash: '5 gpm' };
const leak = { decided: [{ what: 'fault' as const, value: 'leak-raw-to-drain' }] };

describe('a backwash outside the window', () => {
  it('has the chosen drain control among parts, work and gate, together with other work', () => {
    const { window, repair, operations, gate } = worked(weak, leak);
    if (window?.state !== 'open') throw new Error('no window');
    expect(window).toMatchObject({ fits: 'below', choice: 'd4' });
    const parts = [...repair.parts, ...repair.differs.flatMap((one) => one.parts)].map(({ part }) => part);
    expect(parts).toContain('drain-d4');
    expect(parts).not.toContain('drain-d2');
    expect(operations).toContain('drain-control-out');
    const asked = gate?.asks.find(({ id }) => id === 'kit');
    expect(asked?.met).toBe(false);
    expect(asked === undefined ? '' : formatMessage(asked.says, english)).toContain('Drain control, 4 slots');
    expect(repair.advice.map((one) => formatMessage(one, english)).join()).toContain(
      'Drain control, 4 slots',
    );
  });

  it('is mended where nothing else is wrong, and waits while a fault is sought', () => {
    expect(worked(weak).repair.targets).toEqual([{ kind: 'replace', role: 'drain-control' }]);
    const complaint = { words: 'The water is hard.' };
    expect(worked(weak, { complaint }).repair.targets).toEqual([]);
  });

  it('is refused where the control is to be renewed and none of the family lies in the window', () => {
    const supply = { pressure: '60 psi', flow: '4.5 gpm', drain: '12 gpm' };
    const decided = [{ what: 'fault' as const, value: 'drain-control-lost' }];
    const { window, repair } = worked(weak, { supply, decided });
    expect(window).toMatchObject({ state: 'open', fits: 'below' });
    expect(window).not.toHaveProperty('choice');
    expect(repair.refused.map(({ key }) => key)).toEqual(['repair.no-drain-control']);
    expect(repair.targets).not.toContainEqual({ kind: 'replace', role: 'drain-control' });
    expect(worked(weak, { supply, ...leak }).repair.refused).toEqual([]);
  });

  it('is refused with the reason where the window is empty and the control is to be renewed', () => {
    const supply = { pressure: '60 psi', flow: '2 gpm', drain: '12 gpm' };
    const decided = [{ what: 'fault' as const, value: 'drain-control-lost' }];
    const { window, repair } = worked(weak, { supply, decided });
    expect(window?.state).toBe('empty');
    expect(repair.refused.map(({ key }) => key)).toEqual(['repair.no-drain-window']);
    expect(repair.parts).toEqual([]);
    expect(worked(weak, { supply, ...leak }).repair.refused).toEqual([]);
  });
});

describe('a backwash inside the window', () => {
  it('leaves the drain control where it is', () => {
    const { window, repair } = worked(right, leak);
    expect(window).toMatchObject({ state: 'open', fits: 'inside' });
    expect(repair.targets).not.toContainEqual({ kind: 'replace', role: 'drain-control' });
  });
});

describe('a backwash outside by less than it is known', () => {
  it('changes no control', () => {
    const weakly = worked({ drain: 'd3', backwash: { value: '4 gpm', u: '2 gpm' } });
    expect(weakly.window).toMatchObject({ fits: 'below', clearly: false });
    expect(weakly.repair.targets).toEqual([]);
  });
});
