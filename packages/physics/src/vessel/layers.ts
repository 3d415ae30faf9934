import { requireNotNegative, requirePositive } from '../meta/assert.ts';

/** A layer as it was put in: from the floor up, by depth or by volume. */
export type LayerIn = { readonly id: string } & ({ readonly depth: number } | { readonly volume: number });

/** A layer as it lies: where it begins and ends above the floor. */
export type Layer = {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly volume: number;
};

/**
 * Where the layers of a round tank lie, from the floor up.
 *
 * @throws RangeError on a diameter that is not positive or a negative depth or volume.
 * @example
 * ```ts
 * stackLayers(0.4, [{ id: 'gravel', depth: 0.1 }, { id: 'resin', volume: 0.1131 }]).at(1)?.to // => 1.00002
 * ```
 */
export const stackLayers = (diameter: number, layers: readonly LayerIn[]): readonly Layer[] => {
  requirePositive('diameter', diameter);
  const area = (Math.PI / 4) * diameter ** 2;
  let top = 0;
  return layers.map((layer) => {
    const depth = 'depth' in layer ? layer.depth : layer.volume / area;
    requireNotNegative('depth', depth);
    const from = top;
    top += depth;
    return { id: layer.id, from, to: top, volume: depth * area };
  });
};
