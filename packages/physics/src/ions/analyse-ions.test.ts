import { describe, expect, it } from 'vitest';
import { analyseIons } from './analyse-ions.ts';
import { equivalentsOf, fromNitrogen } from './ions.ts';

/** Sample 2 of Hem (1989), figure 37. */
const hem = {
  calcium: 0.048,
  magnesium: 0.0036,
  sodium: 0.0021,
  bicarbonate: 0.152,
  sulfate: 0.0032,
  chloride: 0.008,
};

describe('checking a water analysis', () => {
  it('finds a published analysis fine', () => {
    expect(analyseIons(hem)).toMatchObject({ verdict: 'fine', doubts: [], missing: [] });
  });

  it('counts alkalinity as bicarbonate where no bicarbonate is given', () => {
    const { bicarbonate, ...others } = hem;
    const alkalinity = equivalentsOf('bicarbonate', bicarbonate);
    expect(analyseIons(others, { alkalinity }).chargeBalance).toBeCloseTo(analyseIons(hem).chargeBalance, 12);
  });

  it('says that alkalinity is missing rather than only that the charges do not meet', () => {
    const { bicarbonate: _left, ...others } = hem;
    expect(analyseIons(others)).toMatchObject({ verdict: 'questionable', missing: ['alkalinity'] });
  });

  it('calls a balance off by more than 5 % odd and by more than 12 % questionable', () => {
    const verdict = (sodium: number): string => analyseIons({ ...hem, sodium }).verdict;
    expect([verdict(0.0021), verdict(0.0121), verdict(0.0221)]).toEqual(['fine', 'odd', 'questionable']);
  });

  it('doubts a hardness that calcium and magnesium do not bear out', () => {
    const { hardness } = analyseIons(hem);
    expect(analyseIons(hem, { hardness: hardness * 1.3 }).doubts).toEqual([
      { about: 'hardness', verdict: 'questionable' },
    ]);
    expect(analyseIons(hem, { hardness: hardness * 1.1 }).doubts).toEqual([]);
  });

  it('calls a conductivity odd beyond 15 % of the measured', () => {
    const { conductivity } = analyseIons(hem);
    expect(analyseIons(hem, { conductivity: conductivity * 1.3 }).doubts).toEqual([
      { about: 'conductivity', verdict: 'odd' },
    ]);
    expect(analyseIons(hem, { conductivity: conductivity * 1.1 }).verdict).toBe('fine');
  });

  it('does not hang on the order in which the ions were written', () => {
    const turned = Object.fromEntries(Object.entries(hem).reverse());
    expect(analyseIons(turned)).toEqual(analyseIons(hem));
  });

  it('throws on an analysis without any ion', () => {
    expect(() => analyseIons({})).toThrow(RangeError);
  });

  it('reads nitrogen as the whole ion', () => {
    expect(fromNitrogen('nitrate', 0.01)).toBeCloseTo(0.044268, 6);
    expect(fromNitrogen('ammonium', 0.01)).toBeCloseTo(0.012878, 6);
  });
});
