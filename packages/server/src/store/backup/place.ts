/** Where a record lies: its database and the folder of its files. */
export type Place = { readonly files: string } & (
  | { readonly kind: 'sqlite'; readonly path: string }
  | { readonly kind: 'postgres'; readonly url: string }
);

/** A time as it stands in the name of a file: 20261125T140302Z. */
export const stampOf = (iso: string): string => iso.replaceAll(/[-:]|\.\d+/gu, '');
