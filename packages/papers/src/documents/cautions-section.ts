import type { CautionDefinition } from '@brinewright/equipment';
import type { AppliedCaution } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import type { Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { bullets, section, tick } from './parts.ts';
import type { Sheet } from './sheet.ts';

type Signal = CautionDefinition['signal'];

const signals: Readonly<Record<Signal, MessageKey>> = {
  danger: 'caution.danger',
  warning: 'caution.warning',
  caution: 'caution.caution',
  notice: 'caution.notice',
};

const order: Readonly<Record<Signal, number>> = { danger: 0, warning: 1, caution: 2, notice: 3 };

/** 'Warning. Hot water': how a caution is named where it is not told in full. */
export const cautionName = (sheet: Sheet, id: string): string => {
  const definition = sheet.family?.cautions.find((one) => one.id === id);
  return definition === undefined
    ? id
    : `${sheet.word(signals[definition.signal])}. ${sheet.text(definition.title)}`;
};

const fact = (sheet: Sheet, definition: CautionDefinition, acknowledged: boolean): Markup | undefined =>
  definition.fact === undefined
    ? undefined
    : html(
        'p',
        { class: 'fact' },
        tick(acknowledged),
        html(
          'span',
          {},
          sheet.word(acknowledged ? 'papers.fact.seen' : 'papers.fact.open', {
            fact: sheet.text(definition.fact),
          }),
        ),
      );

const cautionBox = (sheet: Sheet, definition: CautionDefinition, applied: AppliedCaution): Markup =>
  classed(
    'div',
    `caution ${definition.signal}`,
    html(
      'p',
      {},
      html('b', { class: 'signal' }, sheet.word(signals[definition.signal])),
      html('b', {}, ` ${sheet.text(definition.title)}`),
    ),
    html('p', {}, sheet.text(definition.does)),
    bullets(definition.act.map(sheet.text)),
    fact(sheet, definition, applied.acknowledged),
  );

const boxes = (sheet: Sheet, which: readonly Signal[]): readonly Markup[] =>
  sheet.assessment.cautions
    .flatMap((applied) => {
      const definition = sheet.family?.cautions.find(({ id }) => id === applied.caution);
      return definition === undefined || !which.includes(definition.signal) ? [] : [{ definition, applied }];
    })
    .toSorted((a, b) => order[a.definition.signal] - order[b.definition.signal])
    .map(({ definition, applied }) => cautionBox(sheet, definition, applied));

/** Danger and warning: before the work that they are about. */
export const graveCautions = (sheet: Sheet): Markup | undefined => {
  const grave = boxes(sheet, ['danger', 'warning']);
  return grave.length === 0
    ? undefined
    : section(sheet.word('papers.cautions.grave'), undefined, classed('div', 'columns', grave));
};

/** The lighter ones, and who outranks this paper. */
export const lightCautions = (sheet: Sheet): Markup | undefined => {
  const light = boxes(sheet, ['caution', 'notice']);
  if (sheet.assessment.cautions.length === 0) return undefined;
  return section(
    sheet.word('papers.cautions'),
    undefined,
    light.length === 0 ? undefined : classed('div', 'columns', light),
    html('p', { class: 'second codes' }, sheet.word('caution.codes')),
  );
};
