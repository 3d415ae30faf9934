/** Texts that are rightly the same in English and Spanish. The catalogue's test refuses any other. */
export const sameInBoth: readonly string[] = ['English', 'Español', 'error', 'pH'];
