/** The typeface of our papers, as a module to be resolved by whoever reads files. */
export const fontFile =
  '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2';
