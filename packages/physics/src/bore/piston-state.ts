import { joined, type PortGroup, type SealNo } from './body.ts';
import { type Bore, type Piston, type SealRule, type Span, sameLength } from './lengths.ts';

/**
 * What the piston does to a seal: `open` and `closed` keep the rule; `part-open` is reached by a groove that does not
 * pass it far enough; `thin` is covered by less land than the rule asks.
 */
export type SealState = 'open' | 'part-open' | 'thin' | 'closed';

export type PistonState = {
  readonly shift: number;
  readonly seals: readonly { readonly seal: SealNo; readonly state: SealState }[];
  /** Seals open by the rule. */
  readonly open: readonly SealNo[];
  /** Seals a groove reaches at all; water passes them. */
  readonly reached: readonly SealNo[];
  /** Ports joined by the seals reached. */
  readonly joined: readonly PortGroup[];
};

const within = (place: number, [from, to]: Span, margin: number): boolean =>
  from + margin <= place + sameLength && place <= to - margin + sameLength;

/** Distance from a place on land to the nearest groove or end of the piston. */
const landAround = (place: number, piston: Piston): number => {
  const edges = [...piston.grooves.flat(), ...piston.length];
  return Math.min(...edges.map((edge) => Math.abs(place - edge)));
};

const sealState = (place: number, piston: Piston, rule: SealRule): SealState => {
  // Beyond the ends of the piston nothing covers the seal.
  if (!within(place, piston.length, 0)) return 'open';
  if (piston.grooves.some((groove) => within(place, groove, rule.reach))) return 'open';
  if (piston.grooves.some((groove) => within(place, groove, 0))) return 'part-open';
  return landAround(place, piston) + sameLength >= rule.cover ? 'closed' : 'thin';
};

/** What the piston does when it stands a shift away from the drive. Checked: checks/src/published/bore.ts. */
export const stateAt = ({ body, lengths }: Bore, shift: number): PistonState => {
  const seals = lengths.seals.map(({ id, at }) => ({
    seal: id,
    state: sealState(at - shift, lengths.piston, lengths.rule),
  }));
  const open = seals.filter(({ state }) => state === 'open').map(({ seal }) => seal);
  const reached = seals
    .filter(({ state }) => state === 'open' || state === 'part-open')
    .map(({ seal }) => seal);
  return { shift, seals, open, reached, joined: joined(body, reached) };
};

/** How far a piston stands out of its place when the sleeve on the rod is not the one it was made for. */
export const displacement = (sleeve: { readonly fitted: number; readonly madeFor: number }): number =>
  sleeve.fitted - sleeve.madeFor;

/** A place the drive stops at. */
export type StopShift = { readonly stop: string; readonly shift: number };

/** What the piston does at each stop; displaced, what a wrong build does there. */
export const statesAtStops = (
  bore: Bore,
  stops: readonly StopShift[],
  displaced = 0,
): readonly (PistonState & { readonly stop: string })[] =>
  stops.map(({ stop, shift }) => ({ stop, ...stateAt(bore, shift + displaced) }));

/** A stretch of travel on which the same ports are joined. */
export type Transit = { readonly from: number; readonly to: number; readonly joined: readonly PortGroup[] };

/** The trade measures the travel in steps of a millimetre. */
const travelStep = 1e-3;

/**
 * Ports joined on the way from one shift to another, looked at every millimetre, equal neighbours put together.
 *
 * @throws RangeError on a travel that runs backwards or a step that is not positive.
 */
export const transit = (bore: Bore, [from, to]: Span, step = travelStep): readonly Transit[] => {
  if (!(step > 0 && to >= from)) throw new RangeError(`no travel from ${from} to ${to} by ${step}`);
  const count = Math.floor((to - from + sameLength) / step);
  const stretches: Transit[] = [];
  for (let place = 0; place <= count; place++) {
    const shift = from + place * step;
    const ports = stateAt(bore, shift).joined;
    const last = stretches.at(-1);
    if (last !== undefined && same(last.joined, ports)) stretches.splice(-1, 1, { ...last, to: shift });
    else stretches.push({ from: shift, to: shift, joined: ports });
  }
  return stretches;
};

/** Whether two lists of groups, both in order of name, are the same. */
const same = (a: readonly PortGroup[], b: readonly PortGroup[]): boolean =>
  a.length === b.length &&
  a.every((group, place) => {
    const other = b[place];
    return other?.length === group.length && group.every((port, index) => port === other[index]);
  });
