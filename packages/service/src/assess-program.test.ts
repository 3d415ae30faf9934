import { expect, it } from 'vitest';
import { assess, assessProgram } from './assess.ts';
import { laundry } from './testing/laundry.ts';
import { shippedEquipment } from './testing/shipped.ts';
import { visitSchema } from './visit/schema.ts';

const equipment = shippedEquipment();
const now = '2026-11-25T10:00:00Z';

it('programs from numbers what the whole assessment programs, and leaves the other stages waiting', () => {
  const visit = visitSchema.parse(laundry());
  const whole = assess(visit, equipment, { now, effort: 'quick' });
  const alone = assessProgram(visit, equipment, { now });
  expect(alone.stages.program).toEqual(whole.stages.program);
  expect(alone.stages.situation.figures).toEqual(whole.stages.situation.figures);
  expect([alone.stages.diagnosis.state, alone.stages.plan.state]).toEqual(['blocked', 'blocked']);
});

it('says why there is no program where nobody knows what the unit is', () => {
  const visit = visitSchema.parse(laundry({}, { family: 'nobody' }));
  const { program, situation } = assessProgram(visit, equipment, { now }).stages;
  expect([program.state, situation.state]).toEqual(['blocked', 'blocked']);
});
