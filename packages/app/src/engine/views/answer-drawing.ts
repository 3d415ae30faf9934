import { html, raw, written } from '@brinewright/papers';

/*
 * Answers that can be drawn from the definition alone: a count as so many marks on a plate, a cast letter on a boss.
 * All answers of a tell have the same view and scale; the tell itself is in accent and heavier than the rest.
 */

const width = 150;
const height = 84;
const mostMarks = 12;

/** One drawing for each answer, or none at all: some drawn and some not would not compare. */
export const answerDrawings = (titles: readonly string[]): readonly string[] | undefined => {
  if (titles.every(isCount)) return titles.map((title) => counted(Number(title)));
  return titles.every(isLetter) ? titles.map(lettered) : undefined;
};

const isCount = (name: string): boolean => /^\d{1,2}$/u.test(name) && Number(name) <= mostMarks;
const isLetter = (name: string): boolean => /^[A-Z]$/u.test(name);

const picture = (...inside: readonly string[]): string =>
  written(
    html(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        class: 'bw',
        viewBox: `0 0 ${width} ${height}`,
        width,
        height,
        'aria-hidden': 'true',
      },
      raw(inside.join('')),
    ),
  );

const shape = (name: string, attributes: Readonly<Record<string, string | number>>, text?: string): string =>
  written(html(name, attributes, text));

/** A plate with so many bars. */
const counted = (count: number): string => {
  const step = (width - 24) / count;
  return picture(
    shape('rect', { x: 8, y: 14, width: width - 16, height: height - 28, class: 'edge' }),
    ...Array.from({ length: count }, (_, place) =>
      shape('rect', {
        x: 12 + step * (place + 0.5) - 3,
        y: 22,
        width: 6,
        height: height - 44,
        class: 'wash accent-edge',
      }),
    ),
  );
};

/** A round boss with the letter cast on it. */
const lettered = (letter: string): string =>
  picture(
    shape('circle', { cx: width / 2, cy: height / 2, r: 36, class: 'edge' }),
    shape('circle', { cx: width / 2, cy: height / 2, r: 31, class: 'fine' }),
    shape(
      'text',
      { x: width / 2, y: height / 2 + 13, class: 'accent-ink cast', 'text-anchor': 'middle' },
      letter,
    ),
  );
