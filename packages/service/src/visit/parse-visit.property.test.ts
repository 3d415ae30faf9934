import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryVisit } from '../testing/arbitrary-visit.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { parseVisit, writeVisit } from './parse-visit.ts';
import { visitSchema } from './schema.ts';

const runs = { numRuns: 300, seed: 20261125 };

describe('a visit written as YAML', () => {
  it('is read back as the same visit, with nothing to say about it, and written the same way again', () => {
    fc.assert(
      fc.property(arbitraryVisit(shippedEquipment()), (document) => {
        const visit = visitSchema.parse(document);
        const text = writeVisit(visit);
        const read = parseVisit('visit.yaml', text);
        expect(read.issues).toEqual([]);
        if (!read.ok) throw new Error('not read');
        expect(read.value).toStrictEqual(visit);
        expect(writeVisit(read.value)).toBe(text);
      }),
      runs,
    );
  });
});
