import { formatMessage, type Language, type MessageKey, message } from '@brinewright/words';
import { parseDocument, stringify } from 'yaml';
import { space } from '../issue/space.ts';
import { type Draft, draftFrom } from './draft-from-visit.ts';
import { type Section, samples } from './samples.ts';

export type NewDefinition = {
  /** The stock the draft is like; the piston valve of five stops unless said. */
  readonly like?: string | undefined;
  /** Text of a family's own file, to begin from that family. */
  readonly copyOf?: string | undefined;
  /** A visit as read from YAML; read leniently. */
  readonly fromVisit?: unknown;
  readonly language?: Language;
};

const usualStock = 'stock/piston-five-step';

/** An id from a name as people write it. */
export const idFromName = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^a-z0-9]+/gu, '-')
    .replaceAll(/^-+|-+$/gu, '');

/**
 * A draft of a definition: what is known stands in it, the rest as comments to fill in.
 *
 * It loads as it stands, and `equipment check` finds nothing but notes.
 */
export const newDefinition = (name: string, options: NewDefinition = {}): string => {
  const language = options.language ?? 'en';
  if (options.copyOf !== undefined) return copied(name, options.copyOf, language);
  const draft = options.fromVisit === undefined ? undefined : draftFrom(options.fromVisit);
  const id = idFromName(name);
  const known = {
    family: id === '' ? 'draft' : id,
    title: name,
    source: sentence(draft === undefined ? 'equipment.new.source' : 'equipment.new.source.visit', language),
    like: options.like ?? usualStock,
    kinds: draft?.kinds ?? ['softener'],
    ...draft?.sections,
  };
  const missing = sections.filter((section) => !Object.hasOwn(known, section));
  return [
    ...head(name, language),
    stringify(known, { lineWidth: 0 }).trimEnd(),
    ...foundLines(draft, language),
    '',
    comment(sentence('equipment.new.still', language)),
    ...missing.flatMap((section) => ['', ...sample(section, language)]),
    '',
  ].join('\n');
};

const sections = [
  'limits',
  'features',
  'tells',
  'bore',
  'injectors',
  'controls',
  'controllers',
  'parts',
  'operations',
] as const satisfies readonly Section[];

const sentence = (
  key: MessageKey,
  language: Language,
  values: Readonly<Record<string, string>> = {},
): string => formatMessage(message(key, values), { language, system: 'us' });

const comment = (line: string): string => ['#', line].join(space).trimEnd();

const head = (name: string, language: Language): readonly string[] => [
  comment(sentence('equipment.new.head', language, { name })),
  comment(sentence('equipment.new.check', language)),
];

const sample = (section: Section, language: Language): readonly string[] => {
  const entries = samples(sentence('equipment.new.ask', language))[section];
  return [comment(sentence(`equipment.new.${section}`, language)), ...commented({ [section]: entries })];
};

const commented = (known: Readonly<Record<string, unknown>>): readonly string[] =>
  stringify(known, { lineWidth: 0, flowCollectionPadding: false }).trimEnd().split('\n').map(comment);

const foundLines = (draft: Draft | undefined, language: Language): readonly string[] => {
  if (draft === undefined || Object.keys(draft.found).length === 0) return [];
  return ['', comment(sentence('equipment.new.found', language)), ...commented(draft.found)];
};

/** The other family's file with this one's name; everything in it still to be changed. */
const copied = (name: string, text: string, language: Language): string => {
  const document = parseDocument(text);
  document.set('family', idFromName(name) || 'draft');
  document.set('title', name);
  return [...head(name, language), document.toString({ lineWidth: 0 })].join('\n');
};
