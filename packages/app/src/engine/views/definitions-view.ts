import { type Family, lintFamily, undescribed, variantsOf } from '@brinewright/equipment';
import type { Issue } from '@brinewright/words';
import type { DefinitionText } from '../source.ts';
import type { Speech } from '../speech.ts';
import { type FamilyView, familyView } from './definitions/family-view.ts';
import { type IssueView, issueView } from './definitions/issue-view.ts';
import { type DefinitionSet, readDefinitions } from './definitions/read-definitions.ts';

/** The families on this device, one of them open, and the files that were added. */
export type DefinitionsView = {
  readonly families: readonly FamilyRow[];
  readonly family?: FamilyView | undefined;
  readonly files: readonly FileView[];
  readonly digest: string;
};

export type FamilyRow = {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly variants: number;
  readonly parts: number;
  readonly faults: number;
  readonly tells: number;
  readonly isOwn: boolean;
};

/** A file of one's own, and what is wrong with it. */
export type FileView = {
  readonly name: string;
  readonly isUsed: boolean;
  readonly issues: readonly IssueView[];
};

/** `part` is the family that is open. */
export const definitionsView = (
  shipped: readonly DefinitionText[],
  added: readonly DefinitionText[],
  speech: Speech,
  part?: string,
): DefinitionsView => {
  const set = readDefinitions(shipped, added);
  const families = [...set.compiled.equipment.families.values()].filter(({ id }) => !id.startsWith('stock/'));
  const open = families.find(({ id }) => id === part);
  return {
    families: families.map((family) => familyRow(family, set, speech)),
    family: open === undefined ? undefined : familyView(open, lintOf(open, set), speech),
    files: added.map(({ name }) => ({
      name,
      isUsed: !set.leftOut.includes(name),
      issues: set.issues.filter(({ place }) => place?.file === name).map((issue) => issueView(issue, speech)),
    })),
    digest: set.compiled.equipment.digest,
  };
};

const familyRow = (family: Family, { own }: DefinitionSet, speech: Speech): FamilyRow => ({
  id: family.id,
  title: family.id === undescribed ? speech.word('app.definitions.undescribed') : speech.text(family.title),
  source: family.source,
  variants: variantsOf(family).length,
  parts: family.parts.length,
  faults: family.faults.length,
  tells: family.tells.length,
  isOwn: own.includes(family.id),
});

const lintOf = (family: Family, { compiled }: DefinitionSet): readonly Issue[] => {
  const resolved = compiled.sources.get(family.id);
  return resolved === undefined ? [] : lintFamily({ family, variants: variantsOf(family), resolved });
};
