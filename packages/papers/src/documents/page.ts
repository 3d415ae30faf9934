import { type Content, raw, written } from '../markup/element.ts';
import { html } from '../markup/html.ts';
import { drawingCss } from '../theme/drawing-css.ts';
import { fontFace } from '../theme/font-face.ts';
import { tokenCss } from '../theme/tokens.ts';
import { pageCss } from './page-css.ts';

/** One file that needs nothing else: style, drawings and typeface within. */
export const page = (
  options: { readonly title: string; readonly language: string; readonly fontUri: string | undefined },
  ...content: readonly Content[]
): string => {
  const style = [fontFace(options.fontUri), tokenCss, drawingCss, pageCss]
    .filter((part) => part !== '')
    .join('\n');
  const head = html(
    'head',
    {},
    raw('<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">'),
    html('title', {}, options.title),
    html('style', {}, raw(style)),
  );
  const body = html('body', {}, html('main', { class: 'paper' }, content));
  return `<!doctype html>\n${written(html('html', { lang: options.language }, head, body))}\n`;
};
