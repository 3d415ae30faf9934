import { IntlMessageFormat } from 'intl-messageformat';
import { catalogues, type MessageKey } from './catalogue.ts';
import type { Language } from './message.ts';

/** What a placeholder does: stands for text, is counted by a plural, or chooses among texts. */
export type PlaceholderUse = 'shown' | 'counted' | 'chosen' | 'other';
export type Placeholder = { readonly name: string; readonly use: PlaceholderUse };

export type Pattern = { readonly format: IntlMessageFormat; readonly placeholders: readonly Placeholder[] };

/** The compiled pattern of a key; nothing for a key of a newer version. Compiling is slow, so each is kept. */
export const patternOf = (language: Language, key: MessageKey): Pattern | undefined => {
  const id = `${language}:${key}`;
  const kept = patterns.get(id);
  if (kept !== undefined || !Object.hasOwn(catalogues[language], key)) return kept;
  const made = compilePattern(catalogues[language][key], language);
  patterns.set(id, made);
  return made;
};

const patterns = new Map<string, Pattern>();

/** @throws SyntaxError on a pattern that is not ICU (programming mistake, found by the catalogue's test). */
export const compilePattern = (text: string, language: Language): Pattern => {
  const format = new IntlMessageFormat(text, language, undefined, { ignoreTag: true, formatters });
  return { format, placeholders: unique(format.getAst().flatMap(placeholdersOf)) };
};

const counts = new Intl.NumberFormat('en-US');

/** Figures are written alike in both languages; only the plural rules differ. */
const formatters = {
  getNumberFormat: () => counts,
  getDateTimeFormat: (...args: ConstructorParameters<typeof Intl.DateTimeFormat>) =>
    new Intl.DateTimeFormat(...args),
  getPluralRules: (...args: ConstructorParameters<typeof Intl.PluralRules>) => new Intl.PluralRules(...args),
};

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

/** The parser's numbers for kinds of element: 0 words, 1 placeholder, 7 the # of a plural. */
const placeholdersOf = (element: Element): readonly Placeholder[] => {
  if ('options' in element) {
    const inside = Object.values(element.options).flatMap((option) => option.value.flatMap(placeholdersOf));
    return [{ name: element.value, use: 'pluralType' in element ? 'counted' : 'chosen' }, ...inside];
  }
  if (!('value' in element) || element.type === 0) return [];
  return [{ name: element.value, use: element.type === 1 ? 'shown' : 'other' }];
};

const unique = (placeholders: readonly Placeholder[]): readonly Placeholder[] =>
  placeholders.filter(
    (one, place) =>
      placeholders.findIndex((other) => other.name === one.name && other.use === one.use) === place,
  );
