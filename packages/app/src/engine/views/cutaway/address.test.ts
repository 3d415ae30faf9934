import { expect, it } from 'vitest';
import { type CutChoice, cutChoiceOf, partOfCut } from './address.ts';

it.each<[CutChoice, string | undefined]>([
  [{}, undefined],
  [{ stop: 'brine' }, 'brine'],
  [{ stop: 'slow-rinse', torn: 4 }, 'slow-rinse.torn-4'],
  [{ stop: 'backwash', piston: 'shut-outlet' }, 'backwash.piston-shut-outlet'],
  [{ torn: 2 }, 'torn-2'],
])('an address holds what was chosen, and gives it back: %o', (choice, part) => {
  expect(partOfCut(choice)).toBe(part);
  expect(cutChoiceOf(part)).toMatchObject(choice);
});

it('leaves out what no address of ours holds', () => {
  expect(cutChoiceOf('sideways.torn-x.torn-4')).toEqual({
    stop: undefined,
    torn: undefined,
    piston: undefined,
  });
});
