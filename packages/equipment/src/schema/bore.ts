import { z } from 'zod';
import { stops } from '../model/bore.ts';
import { quantityText } from './quantity-text.ts';
import { says } from './says.ts';
import { fits, id, off, portPattern } from './text.ts';

/** Ports that are joined, as `IN+TOP`. */
export const join = z.string().regex(/^[A-Za-z][A-Za-z0-9-]*(\+[A-Za-z][A-Za-z0-9-]*)+$/u);
const joins = z.array(join);
const port = z.string().regex(portPattern);
const stop = z.enum(stops);
const sealNumbers = z.array(z.int().min(1).max(99));

const joinRow = z.strictObject({
  when: says('joins.when', fits.optional()),
  service: says('joins.service', joins.optional()),
  backwash: says('joins.backwash', joins.optional()),
  brine: says('joins.brine', joins.optional()),
  'fast-rinse': says('joins.fast-rinse', joins.optional()),
  refill: says('joins.refill', joins.optional()),
  open: says('joins.open', z.partialRecord(stop, sealNumbers).optional()),
});
export type WrittenJoinRow = z.infer<typeof joinRow>;

const length = quantityText('length', 'position');

const measured = z.strictObject({
  seals: says('measured.seals', z.array(length).min(1)),
  chambers: says('measured.chambers', z.array(z.strictObject({ port, from: length, to: length })).min(2)),
  stops: says('measured.stops', z.partialRecord(stop, length)),
  pistons: says(
    'measured.pistons',
    z
      .array(
        z.strictObject({
          when: says('joins.when', fits.optional()),
          sleeve: says('measured.sleeve', length.optional()),
          grooves: says('measured.grooves', z.array(quantityText('length', 'positions'))),
          ends: says('measured.ends', quantityText('length', 'positions')),
        }),
      )
      .min(1),
  ),
});
export type WrittenLengths = z.infer<typeof measured>;

const bore = z.strictObject({
  ports: says('bore.ports', z.union([z.string().min(1), z.array(port).min(2)]).optional()),
  joins: says('bore.joins', z.array(joinRow).min(1).optional()),
  'brine-valve': says(
    'bore.brine-valve',
    z.strictObject({ 'opens-in': says('bore.opens-in', z.array(stop).min(1)) }).optional(),
  ),
  measured: says('bore.measured', measured.optional()),
  off: says('off', off),
});
export type WrittenBore = z.infer<typeof bore>;

export const boreEntry = bore;
export const bores = z.record(id, bore);

const pieceNames = ['seal', 'spacer', 'ring', 'plug'] as const;
const namedPiece = z.strictObject({
  seal: id.optional(),
  spacer: id.optional(),
  ring: id.optional(),
  plug: id.optional(),
});
export const stack = z.array(z.union([z.enum(pieceNames), namedPiece])).min(1);
export type WrittenStack = z.infer<typeof stack>;
export const pieces = pieceNames;
