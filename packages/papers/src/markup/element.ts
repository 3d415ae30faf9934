/** Finished SVG or HTML text. Plain strings are escaped wherever they appear; only this type passes through. */
export type Markup = { readonly markup: string };

export type Content = Markup | string | undefined | readonly Content[];

type Attribute = string | number | undefined;
export type Attributes = Readonly<Record<string, Attribute>>;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters are not allowed in XML at all, so they are dropped rather than escaped. */
const forbidden = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

export const escaped = (text: string): string =>
  text.replace(forbidden, '').replace(/[&<>"']/gu, (character) => entities[character] ?? character);

/** To 0.1, without a minus before nought: the same drawing is the same text. */
export const rounded = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing needs finite numbers, got ${value}`);
  const tenths = Math.round(value * 10) / 10;
  return String(tenths === 0 ? 0 : tenths);
};

const attribute = ([name, value]: readonly [string, Attribute]): string => {
  if (value === undefined) return '';
  return ` ${name}="${typeof value === 'number' ? rounded(value) : escaped(value)}"`;
};

const isList = (content: Content): content is readonly Content[] => Array.isArray(content);

export const written = (content: Content): string => {
  if (content === undefined) return '';
  if (typeof content === 'string') return escaped(content);
  return isList(content) ? content.map(written).join('') : content.markup;
};

/** Text that is ours already: a style sheet, a finished drawing. */
export const raw = (markup: string): Markup => ({ markup });

export const element = (
  name: string,
  attributes: Attributes = {},
  ...children: readonly Content[]
): Markup => {
  const head = `<${name}${Object.entries(attributes).map(attribute).join('')}`;
  const body = written(children);
  return { markup: body === '' ? `${head}/>` : `${head}>${body}</${name}>` };
};
