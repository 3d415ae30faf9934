import { type Message, type MessageKey, message } from '@brinewright/words';
import { pieceWords } from '../stack-list.ts';
import { type ExplodedStack, type Placed, stateOf } from './stack-model.ts';

const nameKeys: Readonly<Record<ExplodedStack['way'], MessageKey>> = {
  out: 'papers.exploded.says-out',
  in: 'papers.exploded.says-in',
};

/** In words: how many have moved, which is next, and the whole order. */
export const twinOf = (stack: ExplodedStack, placed: readonly Placed[]): readonly Message[] => {
  const { way, moved, pieces, schematic } = stack;
  const next = placed.find((_, index) => stateOf(index, stack) === 'next');
  return [
    message(nameKeys[way], { count: moved, of: pieces.length }),
    ...(next === undefined
      ? []
      : [
          message('papers.exploded.next', { piece: message(pieceWords[next.piece.is]), number: next.number }),
        ]),
    ...placed.map((piece, index) =>
      message(`papers.exploded.piece-${stateOf(index, stack)}`, {
        place: index + 1,
        piece: message(pieceWords[piece.piece.is]),
        number: piece.number,
      }),
    ),
    ...(schematic ? [message('papers.cutaway.schematic')] : []),
  ];
};
