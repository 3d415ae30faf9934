import { createContext, useContext } from 'react';
import type { Say } from './say.ts';

/** Filled by the shell once the catalogue of the language is here. */
export const WordsContext = createContext<Say>((key) => key);

/** The words of the chrome in the reader's language. */
export const useWord = (): Say => useContext(WordsContext);
