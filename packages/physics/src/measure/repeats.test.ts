import { describe, expect, it } from 'vitest';
import { medianOf, medianOfRepeats } from './repeats.ts';

describe('median of repeats', () => {
  it('is the middle one, or half way between the two in the middle', () => {
    expect(medianOf([3, 1, 2])).toBe(2);
    expect(medianOf([4, 1, 2, 3])).toBe(2.5);
  });

  it('flags one wild reading among three and asks for another', () => {
    const timed = medianOfRepeats([61.8, 71, 62.1], 0.3);
    expect(timed).toMatchObject({ median: 62.1, wild: [1], takeAnother: true });
  });

  it('does not call a third reading wild because two happen to agree', () => {
    expect(medianOfRepeats([62.1, 62.1, 62.6], 0.3).wild).toEqual([]);
  });

  it('widens the uncertainty when the readings scatter more than one reading should', () => {
    const calm = medianOfRepeats([62, 62.1, 61.9], 0.3);
    const rough = medianOfRepeats([60, 62, 64], 0.3);
    expect(calm.uncertainty).toBeCloseTo(0.67 * 0.3, 12);
    expect(rough.uncertainty).toBeGreaterThan(2 * calm.uncertainty);
    expect(rough.wild).toEqual([]);
  });

  it('takes a single reading as it is', () => {
    expect(medianOfRepeats([62], 0.3)).toEqual({
      median: 62,
      uncertainty: 0.3,
      wild: [],
      takeAnother: false,
    });
  });

  it('leaves out without asking when five or more agree', () => {
    const many = medianOfRepeats([62, 62.1, 61.9, 62.2, 90, 62], 0.3);
    expect(many).toMatchObject({ wild: [4], takeAnother: false });
  });
});
