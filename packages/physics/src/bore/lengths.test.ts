import { describe, expect, it } from 'vitest';
import { boreFromLengths } from './lengths.ts';
import { displacement, stateAt } from './piston-state.ts';

const lengths = {
  chambers: [
    { id: 'IN', port: 'IN', from: 0, to: 0.02 },
    { id: 'TOP', port: 'TOP', from: 0.02, to: 0.06 },
  ],
  seals: [{ id: 1, at: 0.02 }],
  fixedPassages: [],
  piston: { grooves: [[0.01, 0.02]], length: [-0.03, 0.05] },
  rule: { reach: 0.004, cover: 0.002 },
} as const;

const stateAtShift = (shift: number) => {
  const result = boreFromLengths(lengths);
  if (!result.ok) throw new Error('lengths should be sound');
  return stateAt(result.bore, shift).seals[0]?.state;
};

describe('a seal under the piston', () => {
  it('is open when a groove passes it on both sides, and only part open before', () => {
    expect(stateAtShift(0.004)).toBe('open');
    expect(stateAtShift(0.006)).toBe('open');
    expect(stateAtShift(0.003)).toBe('part-open');
    expect(stateAtShift(0)).toBe('part-open');
    expect(stateAtShift(0.01)).toBe('part-open');
  });

  it('is closed by enough land, thin by less', () => {
    expect(stateAtShift(-0.001)).toBe('thin');
    expect(stateAtShift(-0.002)).toBe('closed');
    expect(stateAtShift(0.012)).toBe('closed');
  });

  it('is open beyond the end of the piston', () => {
    expect(stateAtShift(0.0501)).toBe('open');
    expect(stateAtShift(-0.0301)).toBe('open');
  });
});

describe('measured lengths that cannot be true', () => {
  it('are told one by one', () => {
    const result = boreFromLengths({
      ...lengths,
      chambers: [
        { id: 'IN', port: 'IN', from: 0, to: 0.02 },
        { id: 'TOP', port: 'TOP', from: 0.021, to: 0.06 },
      ],
      seals: [{ id: 1, at: 0.025 }],
      fixedPassages: [['IN', 'BOT']],
      piston: { grooves: [[0.04, 0.06]], length: [-0.03, 0.05] },
    });
    expect(result).toEqual({
      ok: false,
      problems: [
        { kind: 'chambers-apart', chambers: ['IN', 'TOP'] },
        { kind: 'seal-off-wall', seal: 1, at: 0.025, wall: 0.02 },
        { kind: 'unknown-chamber', chamber: 'BOT' },
        { kind: 'groove-off-piston', groove: [0.04, 0.06] },
      ],
    });
  });

  it('include a seal too few', () => {
    expect(boreFromLengths({ ...lengths, seals: [] })).toEqual({
      ok: false,
      problems: [{ kind: 'seal-count', seals: 0, wanted: 1 }],
    });
  });
});

it('a piston stands out by the sleeve it has too much or too little', () => {
  expect(displacement({ fitted: 0.009, madeFor: 0 })).toBe(0.009);
  expect(displacement({ fitted: 0, madeFor: 0.009 })).toBe(-0.009);
});
