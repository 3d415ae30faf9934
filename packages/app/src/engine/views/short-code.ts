import { sha256Hex } from '@brinewright/journal';

/** Without letters that are taken for figures. */
const letters = '0123456789ACDEFGHJKMNPQRTUVWXYZ';

/** Six letters for a label on the unit: enough for a workshop's units, short enough to type with gloves. */
export const shortCode = (stream: string, conditioner: string): string => {
  const hash = sha256Hex(new TextEncoder().encode(`${stream} ${conditioner}`));
  const places = [0, 1, 2, 3, 4, 5].map((place) => Number.parseInt(hash.slice(place * 4, place * 4 + 4), 16));
  const code = places.map((value) => letters[value % letters.length] ?? '').join('');
  return `${code.slice(0, 3)}-${code.slice(3)}`;
};

/** As typed: spaces, strokes and small letters make no difference. */
export const isCode = (typed: string, code: string): boolean => plain(typed) === plain(code);

const plain = (text: string): string => text.toUpperCase().replace(/[^0-9A-Z]/gu, '');
