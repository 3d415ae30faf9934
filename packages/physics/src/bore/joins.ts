import {
  type BoreBody,
  bodyFromPorts,
  groupsOf,
  joined,
  leakOf,
  type PortGroup,
  type SealNo,
} from './body.ts';

/** What a stop must join; `open` settles it where a port that stands twice leaves a choice. */
export type StopWanted = {
  readonly stop: string;
  readonly joins: readonly (readonly string[])[];
  readonly open?: readonly SealNo[];
};

/** How the open seals of a stop are known: no other set joins the same, the definition says, or the first choice. */
export type Settled = 'only' | 'given' | 'first-choice';

export type StopOpen = {
  readonly stop: string;
  readonly open: readonly SealNo[];
  readonly joined: readonly PortGroup[];
  readonly settled: Settled;
  /** Every set of seals that joins just what is wanted, fewest first. */
  readonly choices: readonly (readonly SealNo[])[];
};

/** Joins that this row of ports cannot make. */
export type JoinProblem =
  | { readonly kind: 'unknown-port'; readonly stop: string; readonly port: string }
  | { readonly kind: 'unknown-seal'; readonly stop: string; readonly seal: SealNo }
  /** The ports are not neighbours, nor linked by neighbours of the same group: the nearest they come to. */
  | {
      readonly kind: 'not-neighbours';
      readonly stop: string;
      readonly wanted: PortGroup;
      readonly linked: readonly PortGroup[];
    }
  | {
      readonly kind: 'open-does-not-serve';
      readonly stop: string;
      readonly open: readonly SealNo[];
      readonly wanted: readonly PortGroup[];
      readonly joined: readonly PortGroup[];
    }
  | { readonly kind: 'too-many-choices'; readonly stop: string; readonly seals: readonly SealNo[] };

export type JoinedBore = {
  readonly body: BoreBody;
  /** The stops that came out; those with problems are left out. */
  readonly stops: readonly StopOpen[];
  readonly problems: readonly JoinProblem[];
};

/** Sets of more seals than this are not tried one by one; `open` must settle such a stop. */
const mostToTry = 12;

const textOf = (groups: readonly PortGroup[]): string => groups.map((group) => group.join('+')).join('|');

const pairsOf = (joins: readonly (readonly string[])[]): readonly (readonly [string, string])[] =>
  joins.flatMap(([first, ...rest]) =>
    first === undefined ? [] : rest.map((port) => [first, port] as const),
  );

/** Only a seal between two ports of one wanted group may open: any other would join what must stay apart. */
const mayOpen = (body: BoreBody, wanted: readonly PortGroup[]): readonly SealNo[] =>
  body.seals.filter((seal) => {
    const [before, behind] = leakOf(body, seal).ports;
    return before !== behind && wanted.some((group) => group.includes(before) && group.includes(behind));
  });

const subsets = (seals: readonly SealNo[]): readonly (readonly SealNo[])[] =>
  seals.reduce<readonly (readonly SealNo[])[]>(
    (sets, seal) => sets.flatMap((set) => [set, [...set, seal]]),
    [[]],
  );

/** Fewest seals first, then the lower numbers. */
const fewestFirst = (a: readonly SealNo[], b: readonly SealNo[]): number => {
  if (a.length !== b.length) return a.length - b.length;
  const place = a.findIndex((seal, index) => seal !== b[index]);
  return place < 0 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
};

/** Wanted groups that stay in pieces even with every seal open that may. */
const unlinked = (body: BoreBody, stop: string, wanted: readonly PortGroup[]): readonly JoinProblem[] => {
  const reachable = joined(body, mayOpen(body, wanted));
  return wanted.flatMap((group): JoinProblem[] => {
    const linked = reachable.filter((part) => part.every((port) => group.includes(port)));
    const whole = linked.some((part) => part.length === group.length);
    return whole ? [] : [{ kind: 'not-neighbours', stop, wanted: group, linked }];
  });
};

type Outcome = { readonly stop: StopOpen } | { readonly problems: readonly JoinProblem[] };

const settle = (body: BoreBody, wish: StopWanted, wanted: readonly PortGroup[]): Outcome => {
  const candidates = mayOpen(body, wanted);
  const tooMany = candidates.length > mostToTry;
  const goal = textOf(wanted);
  const choices = tooMany
    ? []
    : subsets(candidates)
        .filter((set) => textOf(joined(body, set)) === goal)
        .toSorted(fewestFirst);
  if (wish.open !== undefined) return settleGiven(body, wish.stop, wish.open, wanted, choices);
  const [first] = choices;
  if (tooMany) return { problems: [{ kind: 'too-many-choices', stop: wish.stop, seals: candidates }] };
  if (first === undefined) return { problems: unlinked(body, wish.stop, wanted) };
  const settled = choices.length === 1 ? 'only' : 'first-choice';
  return { stop: { stop: wish.stop, open: first, joined: wanted, settled, choices } };
};

const settleGiven = (
  body: BoreBody,
  stop: string,
  given: readonly SealNo[],
  wanted: readonly PortGroup[],
  choices: readonly (readonly SealNo[])[],
): Outcome => {
  const unknown = given.filter((seal) => !body.seals.includes(seal));
  if (unknown.length > 0) return { problems: unknown.map((seal) => ({ kind: 'unknown-seal', stop, seal })) };
  const open = [...new Set(given)].toSorted((a, b) => a - b);
  const made = joined(body, open);
  if (textOf(made) === textOf(wanted))
    return { stop: { stop, open, joined: wanted, settled: 'given', choices } };
  return { problems: [{ kind: 'open-does-not-serve', stop, open, wanted, joined: made }] };
};

const outcomeOf = (body: BoreBody, ports: readonly string[], wish: StopWanted): Outcome => {
  const strangers = [...new Set(wish.joins.flat())].filter((port) => !ports.includes(port));
  if (strangers.length > 0)
    return { problems: strangers.map((port) => ({ kind: 'unknown-port', stop: wish.stop, port })) };
  return settle(body, wish, groupsOf(ports, pairsOf(wish.joins)));
};

/**
 * Which seals must open at each stop, from the ports in order and what each stop joins.
 *
 * A join needs neighbours along the bore, directly or through other ports of the same group. Where a port stands twice
 * there may be a choice: it is listed, `open` settles it, else the first (fewest seals, lowest numbers) is taken and
 * marked so. What cannot be joined is reported as data. Checked: checks/src/published/bore.ts.
 * @example
 * ```ts
 * boreFromJoins({ ports: ['IN', 'TOP', 'DR'], stops: [{ stop: 'service', joins: [['IN', 'TOP']] }] }).stops[0]?.open.join() // => '1'
 * ```
 */
export const boreFromJoins = (definition: {
  readonly ports: readonly string[];
  readonly stops: readonly StopWanted[];
}): JoinedBore => {
  const body = bodyFromPorts(definition.ports);
  const outcomes = definition.stops.map((wish) => outcomeOf(body, definition.ports, wish));
  return {
    body,
    stops: outcomes.flatMap((outcome) => ('stop' in outcome ? [outcome.stop] : [])),
    problems: outcomes.flatMap((outcome) => ('problems' in outcome ? outcome.problems : [])),
  };
};
