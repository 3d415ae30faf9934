import type { UnitSystem } from '@brinewright/units';
import type { Language, MessageKey } from '@brinewright/words';

type OptionDefinition = {
  /** What stands for its value in the help; absent: it has none. */
  readonly value?: string;
  readonly many?: true;
  readonly oneOf?: readonly string[];
  readonly says: MessageKey;
};

/** Every option there is; each verb names those it takes. */
export const optionTable = {
  json: { says: 'cli.option.json' },
  lang: { value: 'en|es', oneOf: ['en', 'es'], says: 'cli.option.lang' },
  system: { value: 'us|metric', oneOf: ['us', 'metric'], says: 'cli.option.system' },
  equipment: { value: 'PATH', many: true, says: 'cli.option.equipment' },
  help: { says: 'cli.option.help' },
  effort: { value: 'quick|full', oneOf: ['quick', 'full'], says: 'cli.option.effort' },
  now: { value: 'ISO', says: 'cli.option.now' },
  strict: { says: 'cli.option.strict' },
  html: { value: 'FILE', says: 'cli.option.html' },
  sheet: { value: 'FILE', says: 'cli.option.sheet' },
  card: { value: 'FILE', says: 'cli.option.card' },
  why: { value: 'FIGURE', says: 'cli.option.why' },
  only: { value: 'TEXT', says: 'cli.option.only' },
  as: { value: 'UNIT', says: 'cli.option.as' },
  unit: { value: 'UNIT', says: 'cli.option.unit' },
  once: { says: 'cli.option.once' },
  visit: { says: 'cli.option.visit' },
  like: { value: 'FAMILY', says: 'cli.option.like' },
  from: { value: 'VISIT.yaml', says: 'cli.option.from' },
  data: { value: 'FILE', says: 'cli.option.data' },
  demo: { says: 'cli.option.demo' },
  lan: { says: 'cli.option.lan' },
  host: { value: 'ADDRESS', says: 'cli.option.host' },
  port: { value: 'N', says: 'cli.option.port' },
  certificate: { value: 'FILE', says: 'cli.option.certificate' },
  key: { value: 'FILE', says: 'cli.option.key' },
  role: { value: 'ROLE', says: 'cli.option.role' },
  'behind-proxy': { says: 'cli.option.behind-proxy' },
} as const satisfies Record<string, OptionDefinition>;

export type OptionName = keyof typeof optionTable;

/** Options that every verb takes. */
export const commonOptions: readonly OptionName[] = ['json', 'lang', 'system', 'equipment', 'help'];

export const optionOf = (name: OptionName): OptionDefinition => optionTable[name];

export const isOptionName = (name: string): name is OptionName => Object.hasOwn(optionTable, name);

/** What was given, as far as it was given; values are checked against their choices. */
export type Given = {
  readonly flags: ReadonlySet<OptionName>;
  readonly values: ReadonlyMap<OptionName, readonly string[]>;
};

export const optionValue = ({ values }: Given, name: OptionName): string | undefined =>
  values.get(name)?.at(-1);

export const languageOf = (given: Given): Language => (optionValue(given, 'lang') === 'es' ? 'es' : 'en');

export const systemOf = (given: Given): UnitSystem =>
  optionValue(given, 'system') === 'metric' ? 'metric' : 'us';
