import { type Drawing, type DrawingOptions, drawn } from '../drawing.ts';
import { type ExplodedStack, stateOf } from './stack-model.ts';
import { ground, inPaintingOrder, patterns, pieceAs, sceneOf } from './stack-scene.ts';
import { twinOf } from './stack-words.ts';

/**
 * The stack along its axis: what is out lies on the bench in order, the next piece in accent with the way it moves,
 * what is still in stands dashed in the bore. Distances of the seals are true to the definition.
 */
export const explodedStack = (stack: ExplodedStack, options: DrawingOptions): Drawing => {
  const scene = sceneOf(stack, options);
  return drawn(
    options,
    {
      height: scene.frame.height,
      twin: twinOf(stack, scene.placed),
      patterns,
    },
    ground(scene),
    inPaintingOrder(scene).map((index) => pieceAs(scene, index, stateOf(index, stack))),
  );
};
