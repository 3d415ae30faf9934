import { escaped, written } from '../../markup/element.ts';
import { say } from '../../say.ts';
import { type DrawingOptions, drawn } from '../drawing.ts';
import { type ExplodedStack, type PieceState, stateOf } from './stack-model.ts';
import { ground, inPaintingOrder, patterns, pieceAs, type Scene, sceneOf } from './stack-scene.ts';
import { twinOf } from './stack-words.ts';

/** The same drawing in pieces, so that a count moves them without drawing anew. */
export type StackLayers = {
  /** Up to the name of the drawing, and from there to the first piece. */
  readonly open: readonly [string, string];
  /** In the order of painting: from the far end to the mouth. */
  readonly pieces: readonly Readonly<Record<PieceState, string>>[];
  readonly close: string;
  /** By how many have moved: the name as an attribute, what it shows, and how each piece stands. */
  readonly moved: readonly {
    readonly name: string;
    readonly says: readonly string[];
    readonly states: readonly PieceState[];
  }[];
};

export const stackLayers = (stack: ExplodedStack, options: DrawingOptions): StackLayers => {
  const scene = sceneOf(stack, options);
  const order = inPaintingOrder(scene);
  const [before = '', after = ''] = emptySheet(scene).split('aria-label=""');
  return {
    open: [`${before}aria-label="`, `"${after.slice(0, -'</svg>'.length)}`],
    pieces: order.map((index) => ({
      out: written(pieceAs(scene, index, 'out')),
      next: written(pieceAs(scene, index, 'next')),
      in: written(pieceAs(scene, index, 'in')),
    })),
    close: '</svg>',
    moved: Array.from({ length: stack.pieces.length + 1 }, (_, moved) => {
      const says = twinOf({ ...stack, moved }, scene.placed).map((one) => say(options, one));
      return {
        name: escaped(says.join(' ')),
        says,
        states: order.map((index) => stateOf(index, { ...stack, moved })),
      };
    }),
  };
};

const emptySheet = (scene: Scene): string =>
  drawn(scene.options, { height: scene.frame.height, twin: [], patterns }, ground(scene)).svg.markup;
