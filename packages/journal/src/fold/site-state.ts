import type { Entry, Json } from '../entry/entry.ts';
import type { Rival } from './folded.ts';
import { type JsonObject, Registers } from './registers.ts';

/** Fields of a unit that are put together one by one; all other fields are whole values. */
export const groupsOfConditioner = ['believed', 'tank', 'fitted', 'measured', 'brineTank'];

/** What holds for the site, whatever visit: the part of a visit that all its visits share. */
export class SiteState {
  readonly #site = new Registers();
  readonly #demand = new Registers();
  readonly #supply = new Registers();
  readonly #water: Json[] = [];
  readonly #conditioners = new Map<string, Registers>();
  readonly #added = new Set<string>();
  readonly #described = new Map<string, Entry[]>();
  #isOpened = false;

  open(entry: Entry, site: Json): void {
    this.#isOpened = true;
    this.describe(entry, site);
  }

  describe(entry: Entry, site: Json): void {
    this.#site.writeLeaves(entry, site);
  }

  analyse(analysis: Json): void {
    this.#water.push(analysis);
  }

  demand(entry: Entry, demand: Json): void {
    this.#demand.writeLeaves(entry, demand);
  }

  supply(entry: Entry, supply: Json): void {
    this.#supply.writeLeaves(entry, supply);
  }

  addConditioner(entry: Entry, id: string, conditioner: Json): void {
    this.#added.add(id);
    this.describeConditioner(entry, id, conditioner);
  }

  describeConditioner(entry: Entry, id: string, conditioner: Json): void {
    const registers = this.#conditioners.get(id) ?? new Registers();
    this.#conditioners.set(id, registers);
    this.#described.set(id, [...(this.#described.get(id) ?? []), entry]);
    registers.writeLeaves(entry, conditioner, groupsOfConditioner);
  }

  /** Entries about units that have not come yet. */
  neverAdded(): readonly Entry[] {
    return [...this.#described].flatMap(([id, entries]) => (this.#added.has(id) ? [] : entries));
  }

  /** As a visit document writes it. A unit that was described and never added is not there yet. */
  written(): JsonObject {
    const conditioners = [...this.#conditioners]
      .filter(([id]) => this.#added.has(id))
      .map(([id, registers]) => ({ id, ...registers.object() }));
    return {
      ...(this.#isOpened ? { site: this.#site.object() } : {}),
      ...(this.#water.length === 0 ? {} : { water: [...this.#water] }),
      ...(this.#demand.isEmpty ? {} : { demand: this.#demand.object() }),
      ...(this.#supply.isEmpty ? {} : { supply: this.#supply.object() }),
      conditioners,
    };
  }

  rivals(): readonly Rival[] {
    return [this.#site, this.#demand, this.#supply, ...this.#conditioners.values()].flatMap((one) =>
      one.rivals(),
    );
  }
}
