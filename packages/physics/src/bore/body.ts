/** A room of the bore between two seals, and the port that opens into it. */
export type Chamber = { readonly id: string; readonly port: string };

/** Seals are numbered from the drive end. */
export type SealNo = number;

/** The bore without lengths: chambers from the drive end, one seal between neighbours, passages in the casting. */
export type BoreBody = {
  readonly chambers: readonly Chamber[];
  /** The number of the seal between a chamber and the next one. */
  readonly seals: readonly SealNo[];
  /** Chambers that the casting joins. */
  readonly passages: readonly (readonly [string, string])[];
};

/** Ports that water can pass between, in order of name. */
export type PortGroup = readonly string[];

/** What a torn seal joins: the chambers on both sides of it and their ports. */
export type Leak = {
  readonly seal: SealNo;
  readonly chambers: readonly [string, string];
  readonly ports: readonly [string, string];
};

const byName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const numbered = (ports: readonly string[], port: string, place: number): string => {
  const times = ports.filter((other) => other === port).length;
  const before = ports.slice(0, place).filter((other) => other === port).length;
  return times === 1 ? port : `${port}${before + 1}`;
};

const repeats = (chambers: readonly Chamber[]): readonly (readonly [string, string])[] =>
  chambers.flatMap((chamber, place) => {
    const next = chambers.slice(place + 1).find((other) => other.port === chamber.port);
    return next === undefined ? [] : [[chamber.id, next.id] as const];
  });

/**
 * A bore from its ports in order: a seal stands between neighbours, a port named twice is joined by the casting.
 *
 * @example
 * ```ts
 * bodyFromPorts(['IN', 'TOP', 'IN']).chambers.map((chamber) => chamber.id).join(' ') // => 'IN1 TOP IN2'
 * ```
 */
export const bodyFromPorts = (ports: readonly string[]): BoreBody => {
  const chambers = ports.map((port, place) => ({ id: numbered(ports, port, place), port }));
  return {
    chambers,
    seals: chambers.slice(1).map((_chamber, place) => place + 1),
    passages: repeats(chambers),
  };
};

/** Which of several names stand together, grown by pairs (union-find with the paths cut short). */
class Groups {
  readonly #parents = new Map<string, string>();

  rootOf(name: string): string {
    const parent = this.#parents.get(name) ?? name;
    if (parent === name) return name;
    const root = this.rootOf(parent);
    this.#parents.set(name, root);
    return root;
  }

  join(a: string, b: string): void {
    this.#parents.set(this.rootOf(a), this.rootOf(b));
  }
}

/** Names gathered by the pairs that join them, groups of one left out; names and groups in order of name. */
export const groupsOf = (
  names: readonly string[],
  pairs: readonly (readonly [string, string])[],
): readonly PortGroup[] => {
  const groups = new Groups();
  for (const [a, b] of pairs) groups.join(a, b);
  const members = new Map<string, Set<string>>();
  for (const name of names) {
    const root = groups.rootOf(name);
    members.set(root, (members.get(root) ?? new Set()).add(name));
  }
  return [...members.values()]
    .filter((group) => group.size > 1)
    .map((group) => [...group].sort(byName))
    .sort((a, b) => byName(a.join(), b.join()));
};

/**
 * What a seal keeps apart. A seal the bore does not have is a programming mistake.
 *
 * @throws RangeError on an unknown seal.
 * @example
 * ```ts
 * leakOf(bodyFromPorts(['IN', 'TOP', 'IN']), 2).ports.join(' ') // => 'TOP IN'
 * ```
 */
export const leakOf = (body: BoreBody, seal: SealNo): Leak => {
  const place = body.seals.indexOf(seal);
  const [before, behind] = body.chambers.slice(place, place + 2);
  if (place < 0 || before === undefined || behind === undefined) throw new RangeError(`no seal ${seal}`);
  return { seal, chambers: [before.id, behind.id], ports: [before.port, behind.port] };
};

const portsOfPassage = (body: BoreBody, passage: readonly [string, string]): readonly [string, string] => {
  const [a, b] = passage.map((id) => body.chambers.find((chamber) => chamber.id === id)?.port);
  if (a === undefined || b === undefined) throw new RangeError(`no such chambers: ${passage.join()}`);
  return [a, b];
};

/**
 * The ports joined while some seals are open.
 *
 * @throws RangeError on an unknown seal.
 * @example
 * ```ts
 * joined(bodyFromPorts(['IN', 'TOP', 'DR', 'IN']), [1, 2]).join(' | ') // => 'DR,IN,TOP'
 * ```
 */
export const joined = (body: BoreBody, open: readonly SealNo[]): readonly PortGroup[] =>
  groupsOf(
    body.chambers.map((chamber) => chamber.port),
    [
      ...body.passages.map((passage) => portsOfPassage(body, passage)),
      ...open.map((seal) => leakOf(body, seal).ports),
    ],
  );

/** What each shut seal would join if it were torn. */
export const leaksWhileShut = (body: BoreBody, open: readonly SealNo[]): readonly Leak[] =>
  body.seals.filter((seal) => !open.includes(seal)).map((seal) => leakOf(body, seal));
