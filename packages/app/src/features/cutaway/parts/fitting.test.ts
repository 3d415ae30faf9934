import { expect, it } from 'vitest';
import { widestIn } from './fitting.tsx';

const drawings = [296, 356, 620].map((width) => ({ width, svg: '' }));

it('shows the widest drawing that fits, and the narrowest where none does', () => {
  const widths = [700, 400, 356, 310, 200].map((room) => widestIn(drawings, room)?.width);
  expect(widths).toEqual([620, 356, 356, 296, 296]);
});
