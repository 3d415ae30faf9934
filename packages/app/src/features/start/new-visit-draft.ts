/** A new visit as far as it was said; empty text is what was not. */
export type NewVisitDraft = {
  readonly site: string;
  /** Of a place that is known. */
  readonly stream: string;
  readonly isSiteChosen: boolean;
  /** Of a unit that is known. */
  readonly unit: string;
  readonly isUnitNew: boolean;
  readonly kind: '' | 'softener' | 'filter';
  readonly family: string;
  readonly name: string;
};

export const emptyNewVisit: NewVisitDraft = {
  site: '',
  stream: '',
  isSiteChosen: false,
  unit: '',
  isUnitNew: false,
  kind: '',
  family: '',
  name: '',
};

export const missingIn = (draft: NewVisitDraft): 'site' | 'unit' | undefined => {
  if (!draft.isSiteChosen) return 'site';
  const isDescribed = draft.isUnitNew && draft.kind !== '' && draft.family !== '';
  return draft.unit !== '' || isDescribed ? undefined : 'unit';
};
