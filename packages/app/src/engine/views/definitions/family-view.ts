import { type Family, type Fits, type Tell, variantsOf } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import type { Issue } from '@brinewright/words';
import type { Speech } from '../../speech.ts';
import { type IssueView, issueView } from './issue-view.ts';

/** One family: its features, tells, parts and faults, and what a look through it finds. */
export type FamilyView = {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly like?: string | undefined;
  readonly variants: number;
  readonly features: readonly FeatureRow[];
  readonly tells: readonly TextRow[];
  readonly parts: readonly TextRow[];
  readonly faults: readonly TextRow[];
  readonly looksWrong: readonly string[];
  readonly lint: readonly IssueView[];
};

export type FeatureRow = { readonly name: string; readonly values: readonly ValueRow[] };
export type ValueRow = { readonly name: string; readonly share: string };

/** A line with what stands under it. */
export type TextRow = { readonly id: string; readonly title: string; readonly under?: string | undefined };

export const familyView = (family: Family, lint: readonly Issue[], speech: Speech): FamilyView => ({
  id: family.id,
  title: speech.text(family.title),
  source: family.source,
  like: family.like,
  variants: variantsOf(family).length,
  features: family.features.map(({ title, values }) => ({
    name: speech.text(title),
    values: values.map(({ title: name, weight }) => ({
      name: speech.text(name),
      share: speech.quantity(quantity('share', Math.round(weight * 100) / 100)),
    })),
  })),
  tells: family.tells.map((tell) => tellRow(tell, speech)),
  parts: family.parts.map(({ id, title, number, fits }) => ({
    id,
    title: speech.text(title),
    under: joined([number, fitsSaid(family, fits, speech)]),
  })),
  faults: family.faults.map(({ id, title, explains, mend }) => ({
    id,
    title: speech.text(title),
    under: joined([speech.text(explains), speech.text(mend)]),
  })),
  looksWrong: family.looksWrong.map(speech.text),
  lint: lint.map((issue) => issueView(issue, speech)),
});

const tellRow = (tell: Tell, speech: Speech): TextRow => ({
  id: tell.id,
  title: speech.text(tell.ask),
  under: 'answers' in tell ? joined(tell.answers.map(({ title }) => speech.text(title))) : undefined,
});

/** 'Water it is made for: hot'. */
const fitsSaid = (family: Family, fits: Fits, speech: Speech): string | undefined => {
  const said = Object.entries(fits).map(([id, allowed]) => {
    const feature = family.features.find((one) => one.id === id);
    const names = allowed.map((value) => {
      const title = feature?.values.find((one) => one.id === value)?.title;
      return title === undefined ? value : speech.text(title);
    });
    return `${feature === undefined ? id : speech.text(feature.title)}: ${names.join(', ')}`;
  });
  return joined(said);
};

const joined = (parts: readonly (string | undefined)[]): string | undefined => {
  const kept = parts.filter((part) => part !== undefined && part !== '');
  return kept.length === 0 ? undefined : kept.join('; ');
};
