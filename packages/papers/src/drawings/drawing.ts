import type { Message } from '@brinewright/words';
import { type Content, element, type Markup, raw } from '../markup/element.ts';
import { type PatternName, patternDefs } from '../markup/patterns.ts';
import { type Reader, say } from '../say.ts';
import { standaloneCss } from '../theme/drawing-css.ts';
import { fontFace } from '../theme/font-face.ts';

/** A picture and what it shows in sentences; the first of them is its finding. */
export type Drawing = {
  readonly svg: Markup;
  readonly twin: readonly Message[];
  readonly width: number;
  readonly height: number;
};

export type DrawingOptions = Reader & {
  /** In px, as shown: words are not scaled down. */
  readonly width: number;
  /** Tells the patterns of several drawings on one page apart. */
  readonly id: string;
  /** With its own style sheet, for a file of its own. */
  readonly standalone?: boolean;
  /** The typeface for a file of its own, as a data: address. */
  readonly fontUri?: string;
};

export const drawingText = 15;

export const drawn = (
  options: DrawingOptions,
  what: {
    readonly height: number;
    readonly twin: readonly Message[];
    readonly patterns?: readonly PatternName[];
    readonly moving?: boolean;
  },
  ...content: readonly Content[]
): Drawing => {
  const { width } = options;
  const { height, twin, patterns = [], moving = false } = what;
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    class: moving ? 'bw moving' : 'bw',
    width,
    height,
    viewBox: `0 0 ${width} ${Math.round(height * 10) / 10}`,
    role: 'img',
    'aria-label': twin.map((sentence) => say(options, sentence)).join(' '),
  };
  const style =
    options.standalone === true
      ? element('style', {}, raw(`${fontFace(options.fontUri)}${standaloneCss}`))
      : undefined;
  const defs = patterns.length === 0 ? undefined : patternDefs(options.id, patterns);
  return { svg: element('svg', attributes, style, defs, content), twin, width, height };
};

export const text = (
  x: number,
  y: number,
  content: string,
  more: { of?: string; anchor?: 'middle' | 'end' } = {},
): Markup => element('text', { x, y, class: more.of, 'text-anchor': more.anchor }, content);
