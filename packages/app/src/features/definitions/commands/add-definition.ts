import type { Draft } from '@brinewright/journal';

/** The workshop's stream bears its own id; the file itself goes by its hash. */
export const addDefinition = (company: string, name: string, file: string): readonly Draft[] => [
  { stream: company, kind: 'definition-added/1', payload: { name, file }, about: {} },
];
