import {
  type BoreBody,
  type Bore as BoreInLengths,
  bodyFromPorts,
  boreFromJoins,
  boreFromLengths,
  displacement,
  type JoinedBore,
  joined,
  type LengthProblem,
  leakOf,
  type PortGroup,
  placeSchematic,
  type SealNo,
  type StopShift,
  schematicLengths,
  stateAt,
} from '@brinewright/physics';
import { type BoreDefinition, type JoinRow, type Port, type Stop, stops } from '../model/bore.ts';
import type { Family } from '../model/family.ts';
import { fitsVariant, type Variant } from '../model/feature.ts';

/** What is wrong inside the valve. The sleeve is the length fitted, m; 0 where it was forgotten. */
export type BoreHarm = {
  readonly torn?: SealNo;
  /** The build that the fitted piston was made for. */
  readonly piston?: Variant;
  readonly sleeve?: number;
};

/** What stands in the bore at one stop, sound or harmed, ready to be drawn. */
export type StateAtStop = {
  readonly open: readonly SealNo[];
  readonly joined: readonly PortGroup[];
  /** How far the piston stands from home, m. */
  readonly shift: number;
  readonly piston: BoreInLengths['lengths']['piston'];
};

/** The bore of one build of a family: what each stop joins, sound or harmed, and lengths to draw it by. */
export type FittedBore = {
  readonly id: string;
  readonly variant: Variant;
  readonly ports: readonly Port[];
  readonly body: BoreBody;
  readonly opensBrineAt: readonly Stop[];
  readonly open: (stop: Stop) => readonly SealNo[];
  readonly joins: (stop: Stop, harm?: BoreHarm) => readonly PortGroup[];
  /** The same with the piston and where it stands; a torn seal is not counted as open here. */
  readonly at: (stop: Stop, harm?: BoreHarm) => StateAtStop;
  readonly leak: (seal: SealNo) => readonly [Port, Port];
  /** Lengths and piston; `schematic` where the definition has none. */
  readonly lengths: BoreInLengths;
  readonly shifts: readonly StopShift[];
  /** How the open seals follow from the joins, stop by stop, and what could not be joined. */
  readonly joined: Pick<JoinedBore, 'stops' | 'problems'>;
  readonly lengthProblems: readonly LengthProblem[];
};

/**
 * The bore of a build; nothing where the family describes none or no line of joins fits.
 *
 * Open seals follow from the joins by adjacency; what a wrong piston or sleeve does follows from the lengths,
 * measured or schematic.
 */
export const boreOf = (family: Family, variant: Variant, id?: string): FittedBore | undefined => {
  const bore = id === undefined ? family.bores[0] : family.bores.find((one) => one.id === id);
  const row = bore?.rows.find((one) => fitsVariant(one.fits, variant));
  if (bore === undefined || row === undefined) return undefined;
  const placed = pistonIn(family, bore, variant);
  if (placed === undefined) return undefined;
  const openAt = (stop: Stop): readonly SealNo[] =>
    placed.joined.stops.find((one) => one.stop === stop)?.open ?? [];
  const body = bodyFromPorts(bore.ports);
  return {
    id: bore.id,
    variant,
    ports: bore.ports,
    body,
    opensBrineAt: bore.brineValve?.opensIn ?? [],
    open: openAt,
    joins: (stop, harm = {}) => {
      const open = isMoved(harm) ? openMoved(family, bore, placed, stop, harm) : openAt(stop);
      return joined(body, harm.torn === undefined ? open : [...open, harm.torn]);
    },
    at: (stop, harm = {}) => {
      const { piston, shift } = pistonAt(family, bore, placed, stop, harm);
      const open = isMoved(harm) ? openMoved(family, bore, placed, stop, harm) : openAt(stop);
      return { open, joined: joined(body, open), shift, piston: piston.lengths.piston };
    },
    leak: (seal) => leakOf(body, seal).ports,
    lengths: placed.bore,
    shifts: placed.shifts,
    joined: placed.joined,
    lengthProblems: placed.problems,
  };
};

type Placed = {
  readonly bore: BoreInLengths;
  readonly shifts: readonly StopShift[];
  readonly madeFor: number;
  readonly joined: JoinedBore;
  readonly problems: readonly LengthProblem[];
};

/** The piston of a build in the bore: with measured lengths where there are some and they can be true. */
const pistonIn = (family: Family, bore: BoreDefinition, variant: Variant): Placed | undefined => {
  const row = bore.rows.find((one) => fitsVariant(one.fits, variant));
  if (row === undefined) return undefined;
  const seals = boreFromJoins({ ports: bore.ports, stops: stops.map((stop) => wanted(row, stop)) });
  const measured = measuredIn(bore, variant);
  if (measured?.result.ok === true) {
    const { shifts, madeFor } = measured;
    return { bore: measured.result.bore, shifts, madeFor, joined: seals, problems: [] };
  }
  const open = stops.map((stop) => ({
    stop,
    open: seals.stops.find((one) => one.stop === stop)?.open ?? [],
  }));
  const made = placeSchematic(bodyFromPorts(bore.ports), open);
  const problems = measured === undefined || measured.result.ok ? [] : measured.result.problems;
  return { bore: made.bore, shifts: made.stops, madeFor: sleeveOf(family, variant), joined: seals, problems };
};

const wanted = (row: JoinRow, stop: Stop) => {
  const open = row.open[stop];
  return { stop, joins: row.joins[stop], ...(open === undefined ? {} : { open }) };
};

const measuredIn = (bore: BoreDefinition, variant: Variant) => {
  const { measured } = bore;
  const piston = measured?.pistons.find((one) => fitsVariant(one.fits, variant));
  if (measured === undefined || piston === undefined) return undefined;
  const body = bodyFromPorts(bore.ports);
  const { reach, cover } = schematicLengths;
  const result = boreFromLengths({
    chambers: measured.chambers.map((chamber, place) => ({
      ...chamber,
      id: body.chambers[place]?.id ?? chamber.port,
    })),
    seals: measured.sealsAt.map((at, place) => ({ id: place + 1, at })),
    fixedPassages: body.passages,
    piston: { grooves: piston.grooves, length: piston.ends },
    rule: { reach, cover },
  });
  const shifts = stops.map((stop) => ({ stop, shift: measured.stops[stop] }));
  return { result, shifts, madeFor: piston.sleeve };
};

/** Where nobody measured, a build that has a sleeve among its parts has one of schematic length. */
const sleeveOf = (family: Family, variant: Variant): number =>
  family.parts.some((part) => part.is === 'sleeve' && fitsVariant(part.fits, variant))
    ? schematicLengths.sleeve
    : 0;

const isMoved = (harm: BoreHarm): boolean => harm.piston !== undefined || harm.sleeve !== undefined;

/** The piston that stands in the bore, and how far from home: a wrong one, or one on a wrong sleeve, is out of place. */
const pistonAt = (family: Family, bore: BoreDefinition, right: Placed, stop: Stop, harm: BoreHarm) => {
  const fitted = harm.piston === undefined ? right : (pistonIn(family, bore, harm.piston) ?? right);
  const shift = right.shifts.find((one) => one.stop === stop)?.shift ?? 0;
  const moved = displacement({ fitted: harm.sleeve ?? right.madeFor, madeFor: fitted.madeFor });
  return { piston: fitted.bore, shift: shift + moved };
};

/** Seals that a wrong piston, or a piston out of its place, lets water past. */
const openMoved = (
  family: Family,
  bore: BoreDefinition,
  right: Placed,
  stop: Stop,
  harm: BoreHarm,
): readonly SealNo[] => {
  const { piston, shift } = pistonAt(family, bore, right, stop, harm);
  return stateAt(piston, shift).reached;
};
