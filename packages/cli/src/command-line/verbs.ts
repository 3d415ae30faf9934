import type { MessageKey } from '@brinewright/words';
import type { OptionName } from './options.ts';

/** A command of the program. The help, the list of verbs and the check of arguments are made from this one table. */
export type Verb = {
  readonly words: readonly string[];
  /** What its arguments are, as the help shows them. */
  readonly args: string;
  readonly least: number;
  readonly most: number;
  readonly options: readonly OptionName[];
  readonly says: MessageKey;
  /** Its arguments as somebody would write them; shown where only the first word of several verbs was given. */
  readonly example?: string;
};

const many = Number.POSITIVE_INFINITY;
const assessing: readonly OptionName[] = ['effort', 'now', 'strict', 'why'];

const stage = (word: string, says: MessageKey): Verb => ({
  words: [word],
  args: 'VISIT.yaml',
  least: 1,
  most: 1,
  options: assessing,
  says,
});

export const verbs: readonly Verb[] = [
  { ...stage('assess', 'cli.verb.assess'), options: [...assessing, 'html', 'sheet', 'card'] },
  stage('recognise', 'cli.verb.recognise'),
  stage('diagnose', 'cli.verb.diagnose'),
  stage('parts', 'cli.verb.parts'),
  stage('plan', 'cli.verb.plan'),
  stage('program', 'cli.verb.program'),
  stage('prove', 'cli.verb.prove'),
  {
    words: ['equipment', 'check'],
    args: '[PATH…]',
    least: 0,
    most: many,
    options: [],
    says: 'cli.verb.equipment.check',
    example: 'docs/samples/heron.yaml',
  },
  {
    words: ['equipment', 'schema'],
    args: '',
    least: 0,
    most: 0,
    options: ['visit'],
    says: 'cli.verb.equipment.schema',
    example: '--lang es',
  },
  {
    words: ['equipment', 'show'],
    args: 'FAMILY [SECTION|ids]',
    least: 1,
    most: 2,
    options: [],
    says: 'cli.verb.equipment.show',
    example: 'osier ids',
  },
  {
    words: ['equipment', 'new'],
    args: 'NAME',
    least: 1,
    most: 1,
    options: ['like', 'from'],
    says: 'cli.verb.equipment.new',
    example: '"Heron valve" --like osier',
  },
  { words: ['check'], args: '', least: 0, most: 0, options: ['only'], says: 'cli.verb.check' },
  { words: ['lab', 'list'], args: '', least: 0, most: 0, options: [], says: 'cli.verb.lab.list' },
  {
    words: ['lab', 'run'],
    args: 'NAME key="5 gpm"…',
    least: 1,
    most: many,
    options: ['as'],
    says: 'cli.verb.lab.run',
    example: 'refill-time refillWater="3 gal" refillFlow="0.5 gpm"',
  },
  {
    words: ['lab', 'water'],
    args: 'FILE.csv',
    least: 1,
    most: 1,
    options: ['unit'],
    says: 'cli.verb.lab.water',
    example: 'checks/data/waters/groundwater-ohio.csv',
  },
  {
    words: ['start'],
    args: '',
    least: 0,
    most: 0,
    options: ['once', 'effort', 'now', 'data', 'port'],
    says: 'cli.verb.start',
  },
  {
    words: ['serve'],
    args: '',
    least: 0,
    most: 0,
    options: ['data', 'demo', 'lan', 'host', 'port', 'certificate', 'key', 'behind-proxy'],
    says: 'cli.verb.serve',
  },
  { words: ['migrate'], args: '', least: 0, most: 0, options: ['data', 'role'], says: 'cli.verb.migrate' },
  { words: ['backup'], args: 'FILE', least: 1, most: 1, options: ['data'], says: 'cli.verb.backup' },
  { words: ['restore'], args: 'FILE', least: 1, most: 1, options: ['data'], says: 'cli.verb.restore' },
];

/** Verbs of two words that begin alike: equipment, lab. */
export const verbsUnder = (first: string): readonly Verb[] =>
  verbs.filter(({ words }) => words[0] === first && words.length > 1);

export const verbNames: readonly string[] = verbs.map(({ words }) => words.join(' '));
