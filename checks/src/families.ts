import { rows as bore } from './published/bore.ts';
import { rows as brine } from './published/brine.ts';
import { rows as decision } from './published/decision.ts';
import { rows as expansion } from './published/expansion.ts';
import { rows as metrology } from './published/metrology.ts';
import { rows as pipeOrifice } from './published/pipe-orifice.ts';
import { rows as softening } from './published/softening.ts';
import { rows as units } from './published/units.ts';
import { rows as water } from './published/water.ts';
import { rows as waters } from './published/waters.ts';
import type { Claim } from './row.ts';

/** One subject: how the engine computes each row of its data files. */
export type Family = { readonly name: string; readonly rows: () => readonly Claim[] };

export const families: readonly Family[] = [
  { name: 'units', rows: units },
  { name: 'water', rows: water },
  { name: 'brine', rows: brine },
  { name: 'softening', rows: softening },
  { name: 'waters', rows: waters },
  { name: 'expansion', rows: expansion },
  { name: 'pipe-orifice', rows: pipeOrifice },
  { name: 'metrology', rows: metrology },
  { name: 'decision', rows: decision },
  { name: 'bore', rows: bore },
];
