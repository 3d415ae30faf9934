/** A catalogue in another language: the same keys, no more and no fewer. */
export type Translation<English extends Record<string, string>> = Readonly<Record<keyof English, string>>;
