import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryVisit } from '../testing/arbitrary-visit.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { parseVisit, writeVisit } from './parse-visit.ts';
import { visitSchema } from './schema.ts';

const runs = { numRuns: 300, seed: 20261125 };
const documents = arbitraryVisit(shippedEquipment());

describe('a visit written as YAML', () => {
  it('is read back as the same visit, with nothing to say about it', () => {
    fc.assert(
      fc.property(documents, (document) => {
        const visit = visitSchema.parse(document);
        const read = parseVisit('visit.yaml', writeVisit(visit));
        expect(read.issues).toEqual([]);
        expect(read.ok ? read.value : undefined).toStrictEqual(visit);
      }),
      runs,
    );
  });

  it('is written the same way again', () => {
    fc.assert(
      fc.property(documents, (document) => {
        const text = writeVisit(visitSchema.parse(document));
        const read = parseVisit('visit.yaml', text);
        expect(read.ok ? writeVisit(read.value) : '').toBe(text);
      }),
      runs,
    );
  });
});
