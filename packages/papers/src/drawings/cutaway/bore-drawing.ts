import type { Stop } from '@brinewright/equipment';

/** What a section of the bore needs. Lengths in metres from the datum of the bore, the drive on the low side. */
export type BoreDrawing = {
  readonly chambers: readonly Chamber[];
  readonly seals: readonly { readonly number: number; readonly at: number }[];
  readonly piston: {
    readonly grooves: readonly (readonly [number, number])[];
    readonly ends: readonly [number, number];
  };
  readonly stop: Stop;
  /** Where the piston stands at this stop. */
  readonly shift: number;
  readonly joined: readonly (readonly string[])[];
  readonly openSeals: readonly number[];
  /** True where lengths were placed by us because no manual gives them. */
  readonly schematic: boolean;
};

export type Chamber = { readonly port: string; readonly from: number; readonly to: number };

/** A seal and the two chambers it parts. */
export type Parting = {
  readonly number: number;
  readonly at: number;
  readonly before: Chamber;
  readonly after: Chamber;
};

export const middleOf = (chamber: Chamber): number => (chamber.from + chamber.to) / 2;

export const partings = (bore: BoreDrawing): readonly Parting[] =>
  bore.seals.flatMap(({ number, at }) => {
    const before = bore.chambers.findLast((chamber) => chamber.from < at && chamber.to <= at + 1e-9);
    const after = bore.chambers.find((chamber) => chamber.from >= at - 1e-9);
    return before === undefined || after === undefined ? [] : [{ number, at, before, after }];
  });

/** Where a port opens to the outside: its widest chamber, the first of equals. The others are joined by the casting. */
export const neckOf = (bore: BoreDrawing, port: string): Chamber | undefined =>
  bore.chambers
    .filter((chamber) => chamber.port === port)
    .reduce<Chamber | undefined>(
      (widest, chamber) =>
        widest === undefined || chamber.to - chamber.from > widest.to - widest.from + 1e-9 ? chamber : widest,
      undefined,
    );

export const portsOf = (bore: BoreDrawing): readonly string[] => [
  ...new Set(bore.chambers.map((chamber) => chamber.port)),
];

/** The drive side of the first seal carries no water. */
export const dryPort = 'OUTSIDE';
