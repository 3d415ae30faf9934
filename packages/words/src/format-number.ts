const minus = '\u2212';

/**
 * A figure for people: comma between thousands, point before decimals, a true minus, in both languages.
 * Without `digits` whole numbers stay whole and others have at least three significant digits.
 *
 * @throws RangeError on a figure that is not finite (programming mistake).
 * @example
 * ```ts
 * formatNumber(-1234.56) // => '−1,235'
 * ```
 */
export const formatNumber = (value: number, digits?: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be shown`);
  return signed(significant(digits ?? sensibleDigits(value)).format(value));
};

/** With a fixed number of decimals at most; amounts of money. */
export const formatDecimals = (value: number, least: number, most: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be shown`);
  return signed(
    new Intl.NumberFormat('en-US', { minimumFractionDigits: least, maximumFractionDigits: most }).format(
      value,
    ),
  );
};

/** The figure as it was typed, with its own decimals: '5.0' stays '5.0', '1 1/2' becomes '1½'. */
export const formatEntered = (figure: string): string | undefined => {
  const decimal = /^([+-]?) ?([\d,]*)(\.\d+)?\.?$/.exec(figure);
  if (decimal !== null) return enteredDecimal(decimal[1] ?? '', decimal[2] ?? '', decimal[3] ?? '');
  const fraction = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(figure);
  if (fraction === null) return undefined;
  const [, whole = '', top = '', bottom = ''] = fraction;
  const sign = fractions[`${top}/${bottom}`];
  return sign === undefined ? `${whole} ${top}/${bottom}`.trim() : `${whole}${sign}`;
};

const enteredDecimal = (sign: string, whole: string, part: string): string => {
  const grouped = formatDecimals(Number(whole.replaceAll(',', '')), 0, 0);
  return `${sign === '-' ? minus : ''}${grouped}${part}`;
};

const fractions: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

const signed = (text: string): string => (text === '-0' ? '0' : text.replace('-', minus));

const sensibleDigits = (value: number): number => {
  const whole = Math.trunc(Math.abs(value)).toFixed(0).length;
  return Number.isInteger(value) ? 21 : Math.min(21, Math.max(3, whole));
};

const formatters = new Map<number, Intl.NumberFormat>();

/** Building a formatter is slow, so each is kept. */
const significant = (digits: number): Intl.NumberFormat => {
  const kept = formatters.get(digits);
  if (kept !== undefined) return kept;
  const made = new Intl.NumberFormat('en-US', { maximumSignificantDigits: digits });
  formatters.set(digits, made);
  return made;
};
