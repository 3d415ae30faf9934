import type { Issue, Path } from '@brinewright/words';
import { createReport, type Report } from '../issue/report.ts';
import type { Resolved } from '../like/resolve.ts';
import type { Family } from '../model/family.ts';
import { fitsVariant } from '../model/feature.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import { assignments, mostVariants, variantsOf } from '../variants/variants-of.ts';
import { compileBores, compileStack } from './bores.ts';
import { needed, quantityOf, rangeOf } from './compiling.ts';
import { compileCautions, compileChanges, compileComplaints, compileFaults } from './faults.ts';
import { compileFeatures, compileNever, compileTells } from './features.ts';
import { compileControllers, compileControls, compileInjectors, compileMeters } from './fittings.ts';
import { compileOperations } from './operations.ts';
import { compileConversions, compileParts, compileTools } from './parts.ts';
import { prune } from './prune.ts';
import { checkReferences } from './references.ts';
import { compileTests } from './tests.ts';

export type CompiledFamily = { readonly family: Family; readonly issues: readonly Issue[] };

/** A merged definition as the engine reads it, and all that is wrong with it. */
export const compileFamily = (resolved: Resolved): CompiledFamily => {
  const report = createReport(resolved.locate);
  const family = familyOf(resolved, report);
  checkReferences(family, resolved, report);
  checkVariants(family, report);
  return { family: prune(family), issues: [...resolved.issues, ...report.issues] };
};

const familyOf = ({ id, written }: Resolved, report: Report): Family => {
  const bores = compileBores(written, report);
  const { like } = written;
  return {
    id,
    title: needed(written.title, [], 'title', report) ?? id,
    source: needed(written.source, [], 'source', report) ?? id,
    ...(like === undefined ? {} : { like }),
    kinds: written.kinds ?? ['softener'],
    limits: limitsOf(written),
    features: compileFeatures(written, report),
    never: compileNever(written),
    tells: compileTells(written, report),
    bores,
    stack: compileStack(written, bores),
    looksWrong: written['looks-wrong'] ?? [],
    injectors: compileInjectors(written),
    controls: compileControls(written),
    controllers: compileControllers(written, report),
    meters: compileMeters(written, report),
    parts: compileParts(written, report),
    conversions: compileConversions(written, report),
    tools: compileTools(written),
    operations: compileOperations(written, report),
    faults: compileFaults(written, bores, report),
    tests: compileTests(written, report),
    complaints: compileComplaints(written),
    changes: compileChanges(written),
    cautions: compileCautions(written, report),
  };
};

/** Hottest water where nothing tells one build from another. */
const anyWater = 'any';

const limitsOf = ({ limits }: WrittenFamily): Family['limits'] => {
  const { pressure, temperature = {} } = limits ?? {};
  const byWater = typeof temperature === 'string' ? { [anyWater]: temperature } : temperature;
  return {
    ...(pressure === undefined ? {} : { pressure: rangeOf(pressure, 'pressure') }),
    temperature: Object.fromEntries(
      Object.entries(byWater).map(([water, text]) => [water, quantityOf(text, 'temperature')]),
    ),
  };
};

const checkVariants = (family: Family, report: Report): void => {
  const count = assignments(family.features);
  if (count > mostVariants) {
    report.error(['features'], { code: 'variants.too-many', values: { count, limit: mostVariants } });
    return;
  }
  const variants = variantsOf(family);
  if (variants.length === 0) report.error(['never'], { code: 'variants.none' });
  for (const bore of family.bores) {
    const bare = variants.find(({ variant }) => !bore.rows.some((row) => fitsVariant(row.fits, variant)));
    const at: Path = ['bores', bore.id, 'joins'];
    if (bare !== undefined)
      report.error(at, { code: 'bore.no-row', values: { variant: Object.values(bare.variant).join('+') } });
  }
};
