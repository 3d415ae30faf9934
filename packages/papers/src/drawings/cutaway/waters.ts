import { type BoreDrawing, dryPort, type Parting, partings, portsOf } from './bore-drawing.ts';

export type Water = 'raw' | 'treated' | 'brine' | 'drain';

/** What stands in a port, and whether it moves. */
export type Standing = { readonly water: Water | 'none'; readonly moves: boolean };

export type Passage = {
  readonly seal: number;
  readonly from: string;
  readonly to: string;
  readonly water: Water;
};

/** Slow rinse stands at the brine stop with raw water through the injector. */
export type BrineStep = 'draw' | 'slow-rinse';

const groupOf = (bore: BoreDrawing, port: string): readonly string[] =>
  bore.joined.find((group) => group.includes(port)) ?? [port];

const throughInjector = (bore: BoreDrawing, port: string): boolean =>
  bore.stop === 'brine' && port === 'TOP' && groupOf(bore, port).length === 1;

export const standingIn = (bore: BoreDrawing, port: string, step: BrineStep): Standing => {
  const group = groupOf(bore, port);
  const moves = group.length > 1;
  if (port === dryPort) return { water: 'none', moves: false };
  if (throughInjector(bore, port)) return { water: step === 'draw' ? 'brine' : 'raw', moves: true };
  if (group.includes('IN')) return { water: 'raw', moves };
  if (group.includes('DR')) return moves ? { water: 'drain', moves } : { water: 'none', moves };
  return { water: 'treated', moves };
};

/** Water comes from the inlet, or where the inlet is not joined, from the tank. */
const sourceOf = (group: readonly string[]): string | undefined =>
  ['IN', 'TOP', 'BOT'].find((port) => group.includes(port));

type Opened = { readonly seal: number; readonly ports: readonly [string, string] };

const opened = (bore: BoreDrawing): readonly Opened[] =>
  partings(bore)
    .filter((parting) => bore.openSeals.includes(parting.number))
    .map(({ number, before, after }) => ({ seal: number, ports: [before.port, after.port] }));

/** From the source outwards, one open seal at a time. */
const spread = (source: string, seals: readonly Opened[]): readonly Omit<Passage, 'water'>[] => {
  const reached = [source];
  const used = new Set<number>();
  const passages: Omit<Passage, 'water'>[] = [];
  for (const from of reached)
    for (const { seal, ports } of seals) {
      const [a, b] = ports;
      if (used.has(seal) || (a !== from && b !== from)) continue;
      const to = a === from ? b : a;
      used.add(seal);
      passages.push({ seal, from, to });
      if (!reached.includes(to)) reached.push(to);
    }
  return passages;
};

/** How water passes at this stop, in the order of the seals. */
export const passagesIn = (bore: BoreDrawing, step: BrineStep): readonly Passage[] =>
  bore.joined
    .flatMap((group) => {
      const source = sourceOf(group);
      return source === undefined ? [] : spread(source, opened(bore));
    })
    .flatMap((passage) => {
      const { water } = standingIn(bore, passage.from, step);
      return water === 'none' ? [] : [{ ...passage, water }];
    })
    .toSorted((a, b) => a.seal - b.seal);

/** Supply pressure, then what stands behind the bed, then the drain, then the open air. */
const pressureOf = (bore: BoreDrawing, port: string): number => {
  const group = groupOf(bore, port);
  if (port === dryPort) return 0;
  if (group.includes('IN')) return 3;
  if (group.includes('DR')) return 1;
  return 2;
};

export const partingOf = (bore: BoreDrawing, seal: number): Parting | undefined =>
  partings(bore).find((parting) => parting.number === seal);

/** What a torn seal lets through at this stop; nothing where both sides are joined anyway. */
export const leakPast = (bore: BoreDrawing, seal: number, step: BrineStep): Passage | undefined => {
  const parting = partingOf(bore, seal);
  if (parting === undefined) return undefined;
  const [a, b] = [parting.before.port, parting.after.port];
  if (groupOf(bore, a).includes(b) || a === b) return undefined;
  const down = pressureOf(bore, a) > pressureOf(bore, b);
  if (!down && pressureOf(bore, a) === pressureOf(bore, b)) return undefined;
  const [from, to] = down ? [a, b] : [b, a];
  const { water } = standingIn(bore, from, step);
  return water === 'none' ? undefined : { seal, from, to, water };
};

/** What stands where, with the chamber that a torn seal feeds: an idle drain then carries the leak. */
export const standings = (
  bore: BoreDrawing,
  step: BrineStep,
  leak: Passage | undefined,
): ReadonlyMap<string, Standing> =>
  new Map(
    portsOf(bore).map((port) => {
      const sound = standingIn(bore, port, step);
      const fed = leak?.to === port && port === 'DR' && !sound.moves;
      return [port, fed ? { water: 'drain', moves: true } : sound];
    }),
  );
