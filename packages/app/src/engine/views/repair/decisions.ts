import { featureName, type Sheet, valueName } from '@brinewright/papers';
import { noneOfThese } from '@brinewright/service';
import { faultTitle, oddsName } from '../names.ts';
import type { ConversionView, OptionView } from './repair-types.ts';

/** Faults named at most, so that one screen holds them. */
const shownFaults = 5;

/** The likeliest faults, to be decided on; a decision beats the odds. */
export const faultOptions = (sheet: Sheet): readonly OptionView[] => {
  const { diagnosis } = sheet.assessment.stages;
  const decided = (sheet.visit.decided ?? [])
    .filter(({ what }) => what === 'fault')
    .map(({ value }) => value);
  const odds = diagnosis.state === 'done' ? diagnosis.value.odds : [];
  const known = odds.filter(({ fault }) => fault !== noneOfThese);
  return known
    .filter(({ fault }, place) => place < shownFaults || decided.includes(fault))
    .map((one) => ({
      what: 'fault',
      value: one.fault,
      title: faultTitle(sheet, one),
      ...underFault(sheet, one),
      chosen: decided.includes(one.fault),
    }));
};

const underFault = (
  sheet: Sheet,
  {
    p,
    definition,
  }: { readonly p: number; readonly definition?: { readonly mend: Parameters<Sheet['text']>[0] } },
): { readonly under: string } => ({
  under: [oddsName(p), definition === undefined ? '' : sheet.text(definition.mend)]
    .filter((words) => words !== '')
    .join('. '),
});

/** What the family lets the valve become, from a build that may still be it, with what is looked at first. */
export const conversionOptions = (sheet: Sheet): readonly ConversionView[] => {
  const { recognition } = sheet.assessment.stages;
  const features = recognition.state === 'done' ? recognition.value.features : [];
  const may = (feature: string, value: string): boolean =>
    features
      .find((one) => one.feature === feature)
      ?.odds.some((one) => one.value === value && one.p > 0.05) ?? false;
  const decided = (sheet.visit.decided ?? [])
    .filter(({ what }) => what === 'convert')
    .map(({ value }) => value);
  return (sheet.family?.conversions ?? [])
    .filter(({ feature, from }) => may(feature, from))
    .map(({ feature, from, to, check }) => ({
      what: 'convert',
      value: `${feature}:${to}`,
      title: `${featureName(sheet, feature)}: ${valueName(sheet, feature, from)} → ${valueName(sheet, feature, to)}`,
      chosen: decided.includes(`${feature}:${to}`),
      asks: check === undefined ? [] : [sheet.text(check)],
    }));
};
