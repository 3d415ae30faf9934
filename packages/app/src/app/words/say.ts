import type { Language } from '@brinewright/words';
import type { appEn } from '@brinewright/words/app-en';
import { compilePattern } from '@brinewright/words/pattern';

/** A key of the chrome's own small catalogue. */
export type AppWord = keyof typeof appEn;
export type AppCatalogue = Readonly<Record<AppWord, string>>;
export type Say = (key: AppWord, values?: Readonly<Record<string, string | number>>) => string;

/** The chrome's words in one language; patterns are compiled once each. */
export const sayIn = (language: Language, catalogue: AppCatalogue): Say => {
  const compiled = new Map<AppWord, ReturnType<typeof compilePattern>>();
  return (key, values) => {
    const pattern = compiled.get(key) ?? compilePattern(catalogue[key], language);
    compiled.set(key, pattern);
    return String(pattern.format.format(values));
  };
};

/** Only the language in use is loaded. */
export const loadCatalogue = async (language: Language): Promise<AppCatalogue> =>
  language === 'es'
    ? (await import('@brinewright/words/app-es')).appEs
    : (await import('@brinewright/words/app-en')).appEn;
