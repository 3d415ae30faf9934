import { describe, expect, test } from 'vitest';
import { explodedStack } from './exploded-stack.ts';
import { stackLayers } from './stack-layers.ts';
import { type ExplodedStack, placedPieces, stateOf } from './stack-model.ts';

const stack: ExplodedStack = {
  pieces: [
    { is: 'plug' },
    { is: 'seal' },
    { is: 'spacer' },
    { is: 'seal' },
    { is: 'spacer' },
    { is: 'seal' },
    { is: 'ring' },
  ],
  sealsAt: [0.012, 0.046, 0.059],
  schematic: false,
  way: 'out',
  moved: 0,
};
const options = { language: 'en', system: 'us', width: 358, id: 't' } as const;

const statesAt = (way: ExplodedStack['way'], moved: number): string =>
  stack.pieces.map((_, index) => stateOf(index, { ...stack, way, moved }).slice(0, 1)).join('');

describe('the exploded stack', () => {
  test('keeps its seals as far apart as the definition says', () => {
    const seals = placedPieces(stack).filter(({ piece }) => piece.is === 'seal');
    const steps = seals.slice(1).map(({ from }, index) => from - (seals[index]?.from ?? Number.NaN));
    expect(steps.map((step) => step.toFixed(3))).toEqual(['0.034', '0.013']);
  });

  test('counts pieces by their kind, from the mouth', () => {
    expect(placedPieces(stack).map(({ piece, number }) => `${piece.is} ${number}`)).toEqual([
      'plug 1',
      'seal 1',
      'spacer 1',
      'seal 2',
      'spacer 2',
      'seal 3',
      'ring 1',
    ]);
  });

  test('comes out from the mouth and goes in from the far end', () => {
    expect([0, 1, 7].map((moved) => statesAt('out', moved))).toEqual(['niiiiii', 'oniiiii', 'ooooooo']);
    expect([0, 1, 7].map((moved) => statesAt('in', moved))).toEqual(['oooooon', 'oooooni', 'iiiiiii']);
  });

  test.each(['out', 'in'] as const)('made of its layers it is the same drawing, way %s', (way) => {
    const layers = stackLayers({ ...stack, way }, options);
    for (const [moved, { name, states }] of layers.moved.entries()) {
      const pieces = layers.pieces.map((piece, place) => piece[states[place] ?? 'in']);
      const made = [layers.open[0], name, layers.open[1], ...pieces, layers.close].join('');
      expect(made).toBe(explodedStack({ ...stack, way, moved }, options).svg.markup);
    }
    expect(layers.moved).toHaveLength(8);
  });

  test('a stack without lengths says that it is schematic', () => {
    const { twin } = explodedStack({ ...stack, sealsAt: [], schematic: true }, options);
    expect(twin.at(-1)?.key).toBe('papers.cutaway.schematic');
  });
});
