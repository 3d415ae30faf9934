import { type Attributes, type Content, element, type Markup, written } from './element.ts';

/** HTML closes no element with a slash; an empty cell still needs its end tag. */
export const html = (name: string, attributes: Attributes = {}, ...children: readonly Content[]): Markup => {
  const filled = written(children);
  return filled === ''
    ? { markup: `${element(name, attributes).markup.slice(0, -2)}></${name}>` }
    : element(name, attributes, children);
};

export const classed = (name: string, of: string, ...children: readonly Content[]): Markup =>
  html(name, { class: of }, ...children);
