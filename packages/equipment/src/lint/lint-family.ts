import type { Issue } from '@brinewright/words';
import type { Compiled } from '../compile/compile-definitions.ts';
import { distinct } from '../issue/report.ts';
import { variantsOf } from '../variants/variants-of.ts';
import { joinsOpen, lengthsDiffer, openSettled } from './bore-lint.ts';
import { cycleJoins } from './cycle-joins.ts';
import { kitShort } from './kit-short.ts';
import type { LintRule, LintSubject } from './lint-rule.ts';
import { lookAlikeValues } from './look-alike-values.ts';
import { muteTell } from './mute-tell.ts';
import { noInjector } from './no-injector.ts';
import { noSpanish } from './no-spanish.ts';
import { noWaterFeature } from './no-water-feature.ts';
import { noWayBack } from './no-way-back.ts';
import { partWithoutOf } from './part-without-of.ts';
import { precedenceLoop } from './precedence-loop.ts';
import { roleWithoutPart } from './role-without-part.ts';
import { stillToEnter } from './still-to-enter.ts';
import { unreachablePart } from './unreachable-part.ts';

/** In the order in which they are told; 'still to enter' ends the list. */
export const lintRules: readonly LintRule[] = [
  precedenceLoop,
  cycleJoins,
  joinsOpen,
  lengthsDiffer,
  unreachablePart,
  kitShort,
  noInjector,
  noWayBack,
  muteTell,
  lookAlikeValues,
  roleWithoutPart,
  partWithoutOf,
  openSettled,
  noWaterFeature,
  noSpanish,
  stillToEnter,
];

/** All that the rules find in one family. */
export const lintFamily = (subject: LintSubject): readonly Issue[] =>
  lintRules.flatMap((rule) => rule.check(subject));

/** All families of a set of definitions; what stands in a stock is said once. */
export const lintDefinitions = (compiled: Compiled): readonly Issue[] =>
  distinct(
    [...compiled.sources].flatMap(([id, resolved]) => {
      const family = compiled.equipment.families.get(id);
      return family === undefined ? [] : lintFamily({ family, variants: variantsOf(family), resolved });
    }),
  );
