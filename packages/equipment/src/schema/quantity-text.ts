import { isQuantityKind, kinds, type QuantityKind } from '@brinewright/units';
import { z } from 'zod';
import { problemIn, type QuantityForm } from '../quantity/written.ts';

/** A quantity as people write it: number and unit. What is wrong with it is said by `schemaIssues`. */
export const quantityText = (kind: QuantityKind, form: QuantityForm = 'one') =>
  z
    .string()
    .check((read) => {
      if (problemIn(read.value, kind, form) === undefined) return;
      read.issues.push({ code: 'custom', input: read.value, params: { quantity: kind, form } });
    })
    .meta({ quantity: kind });

export const quantityKind = z.enum(Object.keys(kinds).filter(isQuantityKind));
