import type { StackView } from '../../engine/views/work/work-types.ts';

/** The stack as it lies when so many pieces have moved, put together from its layers. */
export const stackPicture = (
  layers: StackView['narrow'],
  moved: number,
): { readonly svg: string; readonly twin: readonly string[] } => {
  const { open, pieces, close } = layers;
  const at = layers.moved[moved];
  const shown = pieces.map((piece, place) => piece[at?.states[place] ?? 'in']);
  return { svg: [open[0], at?.name ?? '', open[1], ...shown, close].join(''), twin: at?.says ?? [] };
};
