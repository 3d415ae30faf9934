import {
  bundleOf,
  compileBundle,
  compileDefinitions,
  type DefinitionText,
  type Equipment,
  type Parsed,
  parseDefinition,
} from '@brinewright/equipment';
import { compileFiles, type DefinitionFiles } from '@brinewright/equipment/load-files';
import type { FoldedWorkshop } from '@brinewright/journal';
import type { Issue } from '@brinewright/words';
import { type ContentFiles, textOf } from './content-files.ts';

export type Uploaded = FoldedWorkshop['definitions'][number];

/** Equipment in use, and what of the uploaded definitions could not be taken in. */
export type InUse = {
  readonly equipment: Equipment;
  /** Uploaded definitions whose file has not come yet. */
  readonly missing: readonly string[];
  /** Why the uploaded definitions are left out, where together they do not compile. */
  readonly leftOut: readonly Issue[];
  /** What the equipment was compiled from, as one text that can travel. */
  readonly bundle: string;
};

/** What a visit says of the definitions it was made with. */
export type Pin = { readonly digest: string | undefined; readonly file: string | undefined };

/** Shipped definitions with those given on the command line; read and checked once, at the start. */
export type BaseDefinitions = {
  readonly texts: readonly DefinitionText[];
  readonly parsed: readonly Parsed[];
  readonly equipment: Equipment;
};

export type BaseRead =
  | { readonly ok: true; readonly base: BaseDefinitions }
  | { readonly ok: false; readonly issues: readonly Issue[]; readonly files: DefinitionFiles['files'] };

export const baseOf = (files: DefinitionFiles): BaseRead => {
  const compiled = compileFiles(files);
  if (!compiled.ok) return { ok: false, issues: compiled.issues.filter(isError), files: files.files };
  const parsed = files.files.map(({ file, text }) => parseDefinition(file, text));
  return { ok: true, base: { texts: files.files, parsed, equipment: compiled.value.equipment } };
};

const isError = ({ severity }: Issue): boolean => severity === 'error';

/** The definitions a workshop works with: those it was started with, and those that were added to it. */
export class Definitions {
  readonly #base: BaseDefinitions;
  readonly #files: ContentFiles;
  readonly #company: string;
  readonly #texts = new Map<string, string>();
  readonly #pinned = new Map<string, Equipment>();
  #made: { readonly of: string; readonly inUse: InUse } | undefined;

  constructor(base: BaseDefinitions, files: ContentFiles, company: string) {
    this.#base = base;
    this.#files = files;
    this.#company = company;
  }

  async inUse(uploaded: readonly Uploaded[]): Promise<InUse> {
    const texts = await Promise.all(uploaded.map(async (one) => ({ ...one, text: await this.#textOf(one) })));
    const here = texts.flatMap(({ name, file, text }) => (text === undefined ? [] : [{ name, file, text }]));
    const missing = texts.flatMap(({ name, text }) => (text === undefined ? [name] : []));
    const of = JSON.stringify([here.map(({ name, file }) => [name, file]), missing]);
    if (this.#made?.of !== of) this.#made = { of, inUse: { ...this.#compiled(here), missing } };
    return this.#made.inUse;
  }

  /** What is wrong with a definition beside those in use; one of the same name is replaced by it. */
  async issuesWith(uploaded: readonly Uploaded[], name: string, text: string): Promise<readonly Issue[]> {
    const others = await Promise.all(
      uploaded
        .filter((one) => one.name !== name)
        .map(async (one) => ({ ...one, text: await this.#textOf(one) })),
    );
    const parsed = others.flatMap((one) =>
      one.text === undefined ? [] : [parseDefinition(one.name, one.text)],
    );
    const { issues } = compileDefinitions([...this.#base.parsed, ...parsed, parseDefinition(name, text)]);
    return issues.filter((issue) => isError(issue) || issue.place?.file === name);
  }

  #compiled(uploaded: readonly { readonly name: string; readonly text: string }[]): Omit<InUse, 'missing'> {
    const { texts, parsed, equipment } = this.#base;
    const alone = { equipment, bundle: bundleOf(texts) };
    if (uploaded.length === 0) return { ...alone, leftOut: [] };
    const own = uploaded.map(({ name, text }) => ({ file: name, text }));
    const compiled = compileDefinitions([
      ...parsed,
      ...own.map(({ file, text }) => parseDefinition(file, text)),
    ]);
    return compiled.ok
      ? { equipment: compiled.value.equipment, bundle: bundleOf([...texts, ...own]), leftOut: [] }
      : { ...alone, leftOut: compiled.issues.filter(isError) };
  }

  /**
   * The equipment a visit was made with, where its file is here and is still read as it was then; else what is in use.
   */
  async pinned({ digest, file }: Pin, inUse: Equipment): Promise<Equipment> {
    if (digest === undefined || digest === inUse.digest || file === undefined) return inUse;
    const known = this.#pinned.get(file);
    if (known !== undefined) return known;
    const text = await textOf(this.#files, this.#company, file);
    const compiled = text === undefined ? undefined : compileBundle(text);
    if (compiled?.ok !== true || compiled.value.equipment.digest !== digest) return inUse;
    this.#pinned.set(file, compiled.value.equipment);
    return compiled.value.equipment;
  }

  async #textOf({ file }: Uploaded): Promise<string | undefined> {
    const text = this.#texts.get(file) ?? (await textOf(this.#files, this.#company, file));
    if (text !== undefined) this.#texts.set(file, text);
    return text;
  }
}
