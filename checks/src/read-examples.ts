import { isObject, readJson } from './read-data.ts';
import type { Claim, Tolerance } from './row.ts';

/** A worked example: inputs and expected values by name, one tolerance for all of them. */
export type WorkedExample = {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly mark: string;
  readonly tolerance: Tolerance;
  readonly input: (name: string) => number;
  readonly inputs: (name: string) => readonly number[];
  /** One claim for an expected value; a list is compared one by one. */
  readonly claim: (name: string, computed: number | readonly number[]) => readonly Claim[];
  readonly expectedNames: readonly string[];
};

const textOf = (value: unknown, where: string): string => {
  if (typeof value !== 'string') throw new Error(`${where}: text expected`);
  return value;
};

const numbersOf = (value: unknown, where: string): readonly number[] => {
  const list: readonly unknown[] = Array.isArray(value) ? value : [value];
  return list.map((item) => {
    if (typeof item !== 'number') throw new Error(`${where}: number expected`);
    return item;
  });
};

const toleranceOf = (value: unknown, where: string): Tolerance => {
  if (isObject(value) && typeof value.rel === 'number') return { rel: value.rel };
  if (isObject(value) && typeof value.abs === 'number') return { abs: value.abs };
  throw new Error(`${where}: no tolerance`);
};

/** 'as U4' names another example's source: followed, so that one source is not counted twice. */
const sourcesOf = (file: string, list: readonly unknown[]): ReadonlyMap<string, string> => {
  const own = new Map(
    list.filter(isObject).map((item) => [textOf(item.id, file), textOf(item.source, file)] as const),
  );
  const followed = [...own].map(([id, source]) => {
    const other = /\bas ([A-Z]\d+)$/.exec(source)?.[1];
    return [id, (other === undefined ? undefined : own.get(other)) ?? source] as const;
  });
  return new Map(followed);
};

const exampleOf = (file: string, value: unknown, sources: ReadonlyMap<string, string>): WorkedExample => {
  if (!isObject(value)) throw new Error(`${file}: an example is no object`);
  const id = textOf(value.id, file);
  const where = `${file} ${id}`;
  const given = isObject(value.inputs) ? value.inputs : {};
  const wanted = isObject(value.expected) ? value.expected : {};
  const common = {
    title: textOf(value.title, where),
    source: sources.get(id) ?? '',
    mark: textOf(value.mark, where),
    tolerance: toleranceOf(value.tolerance, where),
  };
  const inputs = (name: string): readonly number[] => numbersOf(given[name], `${where} ${name}`);
  const claim = (name: string, computed: number | readonly number[]): readonly Claim[] => {
    const expected = numbersOf(wanted[name], `${where} ${name}`);
    const ours = typeof computed === 'number' ? [computed] : computed;
    if (ours.length !== expected.length)
      throw new Error(`${where} ${name}: ${ours.length} values for ${expected.length}`);
    return expected.map((number, i) => ({
      ...common,
      id: expected.length === 1 ? `${id} ${name}` : `${id} ${name} ${i + 1}`,
      computed: ours[i] ?? Number.NaN,
      expected: number,
    }));
  };
  return {
    ...common,
    id,
    inputs,
    input: (name) => inputs(name)[0] ?? Number.NaN,
    claim,
    expectedNames: Object.keys(wanted),
  };
};

/** The worked examples of a JSON file, by id. */
export const readExamples = (file: string): ReadonlyMap<string, WorkedExample> => {
  const content = readJson(file);
  const list: unknown = isObject(content) ? content.examples : undefined;
  if (!Array.isArray(list)) throw new Error(`${file}: no examples`);
  const sources = sourcesOf(file, list);
  const examples = list.map((value: unknown) => exampleOf(file, value, sources));
  return new Map(examples.map((example) => [example.id, example]));
};

/** What the engine computes for every expected value of an example: a missing or surplus name is a mistake. */
export const claimsOf = (
  examples: ReadonlyMap<string, WorkedExample>,
  id: string,
  compute: (example: WorkedExample) => Readonly<Record<string, number | readonly number[]>>,
): readonly Claim[] => {
  const example = examples.get(id);
  if (example === undefined) throw new Error(`no example ${id}`);
  const computed = compute(example);
  const surplus = Object.keys(computed).filter((name) => !example.expectedNames.includes(name));
  if (surplus.length > 0) throw new Error(`${id}: nothing to compare with ${surplus.join(', ')}`);
  return example.expectedNames.flatMap((name) => {
    const ours = computed[name];
    if (ours === undefined) throw new Error(`${id} ${name}: not computed`);
    return example.claim(name, ours);
  });
};
