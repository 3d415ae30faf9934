import { z } from 'zod';
import { issueBody } from '../problem/problem-body.ts';

/* What the API answers with, as far as it is not a message of the sync or a document of its own. */

const said = z.strictObject({
  entry: z.string(),
  author: z.string(),
  at: z.string(),
  zone: z.string(),
  clockOff: z.number().optional(),
});

export const remarkCounts = z.strictObject({
  rivals: z.number(),
  setAside: z.number(),
  waiting: z.number(),
  newer: z.number(),
});

export const siteLine = z
  .strictObject({
    stream: z.string(),
    name: z.string(),
    address: z.string().optional(),
    units: z.number(),
    visits: z.number(),
    lastVisit: z.string().optional(),
    remarks: remarkCounts,
  })
  .meta({ id: 'SiteLine' });

export const unitLine = z
  .strictObject({
    stream: z.string(),
    site: z.string(),
    conditioner: z.string(),
    name: z.string().optional(),
    kind: z.enum(['softener', 'filter']),
    family: z.string(),
    visits: z.number(),
    lastVisit: z.string().optional(),
  })
  .meta({ id: 'UnitLine' });

export const visitLineBody = z
  .strictObject({
    stream: z.string(),
    visit: z.string(),
    site: z.string(),
    date: z.string(),
    unit: z.string(),
    by: z.string().optional(),
    complaint: z.string().optional(),
    state: z.enum(['open', 'handed-over']),
    entries: z.number(),
    started: said,
    last: said,
  })
  .meta({ id: 'VisitLine' });

const remark = said.extend({
  kind: z.string(),
  about: z.strictObject({ visit: z.string().optional(), conditioner: z.string().optional() }),
});

export const siteBody = z
  .strictObject({
    stream: z.string(),
    /** Parts of visit documents, whose JSON Schema is at visit.schema.json. */
    site: z.unknown(),
    conditioners: z.array(z.unknown()),
    visits: z.array(visitLineBody),
    rivals: z.array(
      z.strictObject({
        about: remark.shape.about,
        kind: z.string(),
        what: z.string(),
        values: z.array(said.extend({ value: z.unknown() })),
      }),
    ),
    setAside: z.array(remark.extend({ issues: z.array(issueBody) })),
    waiting: z.array(remark.extend({ for: z.string() })),
    newer: z.array(remark),
  })
  .meta({ id: 'Site' });

export const historyBody = z
  .array(
    z.strictObject({
      visit: z.string(),
      date: z.string(),
      by: z.string(),
      complaint: z.unknown(),
      used: z.unknown(),
      set: z.unknown(),
      readings: z.unknown(),
      proofs: z.unknown(),
      isHandedOver: z.boolean(),
    }),
  )
  .meta({ id: 'History' });

export const partsUsed = z
  .array(
    z.strictObject({
      stream: z.string(),
      site: z.string(),
      visit: z.string(),
      date: z.string(),
      unit: z.string(),
      part: z.string(),
      count: z.number(),
    }),
  )
  .meta({ id: 'PartsUsed' });

export const stockBody = z
  .array(
    z.strictObject({
      place: z.string(),
      name: z.string().optional(),
      lines: z.array(z.strictObject({ part: z.string(), count: z.number(), since: said.optional() })),
      belowZero: z.array(z.string()),
      remarks: remarkCounts,
    }),
  )
  .meta({ id: 'Stock' });

export const visitTaken = z
  .strictObject({ stream: z.string(), visit: z.string(), issues: z.array(issueBody) })
  .meta({ id: 'VisitTaken' });

export const definitionTaken = z
  .strictObject({ name: z.string(), file: z.string(), issues: z.array(issueBody) })
  .meta({ id: 'DefinitionTaken' });

export const imported = z
  .strictObject({
    kept: z.number(),
    /** Of these the record had already. */
    known: z.number(),
    refused: z.array(z.strictObject({ id: z.string().optional(), reason: z.string() })),
  })
  .meta({ id: 'Imported' });
