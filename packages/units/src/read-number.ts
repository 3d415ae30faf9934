/** A number at the start of a text, and what stands behind it. */
export type NumberRead =
  | { readonly state: 'read'; readonly value: number; readonly figure: string; readonly rest: string }
  | { readonly state: 'none' }
  | { readonly state: 'comma'; readonly mended: string };

/**
 * Reads '5', '-5', '1,200', '.5', '1e-3', '3/4', '1 1/2', '1-1/2', '1½'. A comma is taken between
 * thousands only; '1,5' comes back with the point it wants.
 */
export const readNumber = (text: string): NumberRead => {
  const plain = plainText(text);
  const sign = /^[+-]?\s?/.exec(plain)?.[0] ?? '';
  const body = /^[\d.,]+/.exec(plain.slice(sign.length))?.[0] ?? '';
  const rest = plain.slice(sign.length + body.length);
  if (body.includes(',') && !thousands.test(body)) return commaProblem(body, sign, rest);
  const digits = body.replaceAll(',', '');
  if (!decimal.test(digits)) return { state: 'none' };
  const read = withFraction(digits, rest) ?? withExponent(digits, rest);
  return {
    state: 'read',
    value: sign.startsWith('-') ? -read.value : read.value,
    figure: plain.slice(0, plain.length - read.rest.length),
    rest: read.rest.trim(),
  };
};

const thousands = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/;
const decimal = /^(?:\d+\.?\d*|\.\d+)$/;

type Read = { readonly value: number; readonly rest: string };

/** '3/4', and the fraction behind a whole number: '1 1/2', '1-1/2'. */
const withFraction = (digits: string, rest: string): Read | undefined => {
  if (!/^\d+$/.test(digits)) return undefined;
  const simple = /^ ?\/ ?(\d+)/.exec(rest);
  if (simple !== null)
    return { value: Number(digits) / Number(simple[1]), rest: rest.slice(simple[0].length) };
  const mixed = /^[ -](\d+) ?\/ ?(\d+)/.exec(rest);
  if (mixed === null) return undefined;
  return { value: Number(digits) + Number(mixed[1]) / Number(mixed[2]), rest: rest.slice(mixed[0].length) };
};

const withExponent = (digits: string, rest: string): Read => {
  const exponent = /^e[+-]?\d+/i.exec(rest)?.[0] ?? '';
  return { value: Number(digits + exponent), rest: rest.slice(exponent.length) };
};

/** One comma with figures behind it was meant as a point; anything else is not a number. */
const commaProblem = (body: string, sign: string, rest: string): NumberRead => {
  const [whole = '', part = ''] = body.split(',');
  if (body.indexOf(',') !== body.lastIndexOf(',') || !/^\d+$/.test(part) || !/^[\d.]*$/.test(whole))
    return { state: 'none' };
  const figures = `${whole.replaceAll('.', '') || '0'}.${part}`;
  return { state: 'comma', mended: `${sign.trim()}${figures}${rest}`.trim() };
};

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** One kind of space, one kind of minus, fractions spelled out. */
const plainText = (text: string): string =>
  text
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign] ?? sign}`)
    .replace(/[−–]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
