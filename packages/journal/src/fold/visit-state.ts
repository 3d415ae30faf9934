import type { Entry, Json } from '../entry/entry.ts';
import type { Rival, Said, ShownFigures } from './folded.ts';
import { fieldsOf, type JsonObject, Registers, type ValuePath } from './registers.ts';
import { saidOf } from './said.ts';
import { ofUnit, withEntry, without } from './written.ts';

/** Lists of a visit in which every entry stands by itself. */
type ListName = 'readings' | 'photos' | 'signatures' | 'proofs';

/** Lists whose elements have a name, under which a later entry replaces an earlier one. */
type TableName = 'answers' | 'done' | 'used' | 'decided' | 'acknowledged';

/** One visit while it is folded. */
export class VisitState {
  readonly #started: Entry;
  readonly #single = new Registers();
  readonly #parts = new Map<string, Registers>();
  readonly #lists = new Map<ListName, Json[]>();
  readonly #tables: Readonly<Record<TableName, Registers>> = {
    answers: new Registers(),
    /** Two who ticked the same operation at different times agree, unless they counted differently. */
    done: new Registers((value) => counted(value)),
    used: new Registers(),
    decided: new Registers(),
    acknowledged: new Registers(() => ''),
  };
  readonly advice: (Said & { readonly shown: ShownFigures })[] = [];
  handedOver: (Said & { readonly shown?: ShownFigures }) | undefined;
  /** The site as it was known at hand-over; a finished visit stays what it was. */
  siteThen: JsonObject | undefined;
  definitionsFile: string | undefined;
  gone: readonly string[] = [];
  entries = 0;
  #last: Entry;

  constructor(started: Entry) {
    this.#started = started;
    this.#last = started;
  }

  count(entry: Entry): void {
    this.entries += 1;
    this.#last = entry;
  }

  set(entry: Entry, field: string, value: Json): void {
    this.#single.write(entry, [field], value);
  }

  setFields(entry: Entry, value: Json): void {
    this.#single.writeLeaves(entry, value);
  }

  /** A part of the visit whose fields are single values: 'history', 'apart', 'gate'. */
  setPart(entry: Entry, part: string, value: Json): void {
    const registers = this.#parts.get(part) ?? new Registers();
    this.#parts.set(part, registers);
    registers.writeLeaves(entry, value);
  }

  add(list: ListName, value: Json): void {
    this.#lists.set(list, [...(this.#lists.get(list) ?? []), value]);
  }

  put(entry: Entry, table: TableName, name: ValuePath, value: Json): void {
    this.#tables[table].write(entry, name, value);
  }

  get first(): Entry {
    return this.#started;
  }

  get started(): Said {
    return saidOf(this.#started);
  }

  get last(): Said {
    return saidOf(this.#last);
  }

  /** As a visit document writes it, without what it shares with the other visits of the site. */
  written(id: string): JsonObject {
    const { found, set, ...parts } = Object.fromEntries(
      [...this.#parts].map(([part, registers]) => [part, registers.object()]),
    );
    const settings = { ...(found === undefined ? {} : { found }), ...(set === undefined ? {} : { set }) };
    const tables = Object.entries(this.#tables).flatMap(([name, registers]) =>
      registers.isEmpty ? [] : [[name, registers.values().map((one) => elementOf(name, one))] as const],
    );
    return {
      schema: 1,
      id,
      ...this.#single.object(),
      ...parts,
      ...(found === undefined && set === undefined ? {} : { settings }),
      ...Object.fromEntries(this.#lists),
      ...Object.fromEntries(tables),
    };
  }

  rivals(): readonly Rival[] {
    return [this.#single, ...this.#parts.values(), ...Object.values(this.#tables)].flatMap((one) =>
      one.rivals(),
    );
  }
}

const counted = (value: Json): string =>
  JSON.stringify(
    fieldsOf(value)
      .filter(([key]) => key === 'counted')
      .flatMap(([, counts]) => fieldsOf(counts))
      .toSorted(([a], [b]) => (a < b ? -1 : 1)),
  );

/** Answers and operations name the entry they stand in; of a part used, the visit says only what and how many. */
const elementOf = (
  table: string,
  { value, entry }: { readonly value: Json; readonly entry: Entry },
): Json => {
  if (table === 'answers') return ofUnit(entry, value);
  if (table === 'done') return withEntry(entry, value);
  return table === 'used' ? without(value, 'instance', 'from') : value;
};
