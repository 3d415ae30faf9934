import { dated } from '@brinewright/papers';
import { formatQuantity } from '@brinewright/words';
import type { Made } from '../made.ts';
import { type StageId, stageIds } from '../stage-props.ts';
import { dayHere } from './days.ts';
import { unitName } from './places-view.ts';
import { shortCode } from './short-code.ts';
import { type StageState, stageStates, stageToGoOn } from './stage-states.ts';

export type FrameView = {
  readonly site: string;
  readonly unit: string;
  readonly conditioner: string;
  readonly code: string;
  readonly cells: readonly { readonly label: string; readonly value: string }[];
  readonly stages: readonly { readonly id: StageId; readonly state: StageState }[];
  readonly goOn: StageId;
  readonly isHandedOver: boolean;
};

/** What stands around every stage of a visit. */
export const frameView = (made: Made): FrameView => {
  const { folded, subject, visit, speech, stream } = made;
  const states = stageStates(made);
  return {
    site: visit.site.name,
    unit: unitName(subject, speech),
    conditioner: subject.id,
    code: shortCode(stream, subject.id),
    cells: cellsOf(made),
    stages: stageIds.map((id) => ({ id, state: states[id] })),
    goOn: stageToGoOn(states),
    isHandedOver: folded.handedOver !== undefined,
  };
};

const cellsOf = (made: Made): FrameView['cells'] => {
  const { speech, folded } = made;
  const { word } = speech;
  const day = dated(speech, made.visit.date ?? dayHere(folded.started.at));
  const by = made.visit.by?.name ?? folded.started.author;
  const cells = [
    [word('app.frame.valve'), valveOf(made)],
    [word('app.frame.tank'), tankOf(made)],
    [word('app.frame.water'), waterOf(made)],
    [word('app.frame.visit'), `${day}, ${by}`],
  ] as const;
  return cells.flatMap(([label, value]) => (value === undefined ? [] : [{ label, value }]));
};

/** Family, and those of its features that are settled. */
const valveOf = ({ family, assessment, speech }: Made): string => {
  if (family === undefined) return speech.word('papers.valve.unknown');
  const { recognition } = assessment.stages;
  const settled = recognition.state === 'done' ? recognition.value.features : [];
  const names = settled.flatMap(({ feature, settled: value }) => {
    const found = family.features.find(({ id }) => id === feature)?.values.find(({ id }) => id === value);
    return found === undefined ? [] : [speech.text(found.title)];
  });
  return [speech.text(family.title), ...names.slice(0, 2)].join(', ');
};

const tankOf = (made: Made): string | undefined => {
  const volume = figureText(made, 'situation.bed.volume', { us: 'ft3', metric: 'L' });
  const diameter = figureText(made, 'situation.tank.diameter');
  if (volume === undefined) return diameter;
  return diameter === undefined ? volume : made.speech.word('app.frame.tank.of', { volume, diameter });
};

const waterOf = (made: Made): string | undefined => {
  const raw = (made.visit.water ?? []).findLast(({ of }) => of === 'raw');
  if (raw?.hardness === undefined) return undefined;
  const iron = raw.iron === undefined ? undefined : made.speech.quantity(raw.iron.value);
  const hardness = made.speech.quantity(raw.hardness.value);
  return iron === undefined ? hardness : made.speech.word('app.frame.water.iron', { hardness, iron });
};

const figureText = (
  { assessment, speech }: Made,
  id: string,
  unit?: Readonly<Record<'us' | 'metric', string>>,
): string | undefined => {
  const figure = Object.hasOwn(assessment.figures, id) ? assessment.figures[id] : undefined;
  if (figure === undefined) return undefined;
  return formatQuantity(figure.quantity, { ...speech.reader, unit: unit?.[speech.reader.system] }).text;
};
