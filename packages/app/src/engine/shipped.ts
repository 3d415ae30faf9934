import type { DefinitionText } from './source.ts';

const files = import.meta.glob<string>('../../../equipment/definitions/**/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The definitions that come with the app, in order of name. */
export const shippedTexts: readonly DefinitionText[] = Object.entries(files)
  .map(([path, text]) => ({ name: path.replace(/^.*\/definitions\//u, ''), text }))
  .toSorted((a, b) => (a.name < b.name ? -1 : 1));
