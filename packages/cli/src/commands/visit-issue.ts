import { type Issue, type Message, type MessageKey, type MessageValue, message } from '@brinewright/words';

/*
 * The reader of YAML and the schema speak to who writes a definition. Where that leads a technician astray, the same
 * fault is told in the words of a visit.
 */

type Words = (values: Readonly<Record<string, MessageValue>>, issue: Issue) => Partial<Issue>;

const days = new Set(['date', 'when', 'on']);

const told: Readonly<Partial<Record<MessageKey, Words>>> = {
  'issue.yaml.empty': () => ({ mend: message('cli.visit.empty.mend') }),
  'issue.schema.missing-key': ({ key = '' }) => ({ mend: message('cli.visit.missing-key.mend', { key }) }),
  'issue.schema.quote-number': ({ key = '', found = '' }) => ({
    message: message('cli.visit.bare-number', { key, found }),
    mend: message('cli.visit.bare-number.mend', { found }),
  }),
  'issue.schema.wrong-type': ({ key = '', expected }) => wrongType(key, expected),
  'issue.schema.not-an-id': ({ found = '' }, { at }) => ({
    mend: message(isDay(at.at(-1)) ? 'cli.visit.date.mend' : 'cli.visit.id.mend', { found }),
  }),
};

const isDay = (key: string | number | undefined): boolean => typeof key === 'string' && days.has(key);

const wrongType = (key: MessageValue, expected: MessageValue | undefined): Partial<Issue> => {
  switch (keyOf(expected)) {
    case 'schema.type.list':
      return { message: message('cli.visit.no-list', { key }), mend: message('cli.visit.no-list.mend') };
    case 'schema.type.map':
      return { message: message('cli.visit.no-map', { key }), mend: message('cli.visit.no-map.mend') };
    default:
      return {};
  }
};

const keyOf = (value: MessageValue | undefined): string | undefined =>
  typeof value === 'object' && 'key' in value ? value.key : undefined;

export const toldOfVisit = (issue: Issue): Issue => {
  const { key, values = {} }: Message = issue.message;
  return { ...issue, ...told[key]?.(values, issue) };
};

/** A definition where a visit is asked for: that one thing is wrong, not every line of it. */
export const isDefinition = (data: unknown): boolean =>
  typeof data === 'object' &&
  data !== null &&
  ['family', 'stock', 'media'].some((key) => Object.hasOwn(data, key)) &&
  !['site', 'conditioners', 'subject'].some((key) => Object.hasOwn(data, key));
