import type { BackwashWindow } from '@brinewright/service';
import { backwashWindow, type FlowWindow } from '../drawings/backwash-window.ts';
import { type Bed, bedDrawing, type Rise } from '../drawings/bed.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { capital } from '../say.ts';
import { figure } from './derivation.ts';
import { isLength, quantityAt } from './figure-values.ts';
import { measureFirstLines, ofWindow } from './measure-first.ts';
import { bullets, pictured, section, sentences } from './parts.ts';
import { isOfWindow } from './program-section.ts';
import { type Sheet, widths } from './sheet.ts';

/** What sets the ceiling: the bed itself, or what supply or drain carry. */
export const limitOf = (window: BackwashWindow): FlowWindow['limit'] => {
  if (window.ceiling === 'situation.supply.flow') return 'supply';
  return window.ceiling === 'situation.drain.carries' ? 'drain' : 'bed';
};

export const windowFlows = (sheet: Sheet, window: BackwashWindow): FlowWindow | undefined => {
  const [floor, ceiling] = [quantityAt(sheet, window.floor), quantityAt(sheet, window.ceiling)];
  if (floor === undefined || ceiling === undefined) return undefined;
  const aim = window.state === 'open' ? quantityAt(sheet, window.aim) : undefined;
  const fitted = window.state === 'open' ? quantityAt(sheet, window.fitted) : undefined;
  return {
    floor,
    ceiling,
    limit: limitOf(window),
    ...(aim === undefined ? {} : { aim }),
    ...(fitted === undefined ? {} : { fitted }),
  };
};

const emptyWindow = (sheet: Sheet, window: BackwashWindow): Content =>
  window.state === 'open'
    ? undefined
    : classed(
        'div',
        'missing',
        sentences(sheet, [window.why]),
        bullets(window.choices.map((choice) => capital(sheet.say(choice)))),
      );

const risesIn = (sheet: Sheet, depth: number): readonly Rise[] =>
  ['coldest', 'warmest'].flatMap((season) => {
    const temperature = quantityAt(sheet, `situation.temperature.${season}`);
    const expansion = quantityAt(sheet, `program.backwash.expansion.${season}`);
    if (temperature?.kind !== 'temperature' || expansion === undefined) return [];
    return [
      {
        temperature: { kind: 'temperature', si: temperature.si },
        height: { kind: 'length', si: depth * (1 + expansion.si) },
      },
    ];
  });

export const bedOf = (sheet: Sheet): Bed | undefined => {
  const [diameter, depth, free] = [
    'situation.tank.diameter',
    'situation.bed.depth',
    'situation.bed.free',
  ].map((id) => quantityAt(sheet, id));
  if (!isLength(diameter) || !isLength(depth) || !isLength(free)) return undefined;
  return { diameter, depth, free, rises: risesIn(sheet, depth.si) };
};

const bedPicture = (sheet: Sheet): Content => {
  const bed = bedOf(sheet);
  return bed === undefined
    ? undefined
    : pictured(sheet, 'bed', (options) => bedDrawing(bed, options), widths.half);
};

/** The window drawn, its edges by name, what is wrong with what is fitted, and what to measure first. */
const windowSide = (sheet: Sheet, window: BackwashWindow, flows: FlowWindow): Content => {
  const { program } = sheet.assessment.stages;
  const notes = program.state === 'done' ? program.value.notes.filter(isOfWindow) : [];
  const edges = [
    [sheet.word('papers.backwash.floor'), window.floor],
    [sheet.word(`papers.backwash.ceiling-${limitOf(window)}`), window.ceiling],
  ] as const;
  return [
    pictured(sheet, 'window', (options) => backwashWindow(flows, options), widths.half),
    edges.map(([label, id]) => html('div', { class: 'pair' }, html('span', {}, label), figure(sheet, id))),
    emptyWindow(sheet, window),
    sentences(sheet, notes, 'says'),
    measureFirstLines(sheet, ofWindow(sheet, window)),
  ];
};

export const backwashSection = (sheet: Sheet): Markup | undefined => {
  const { program } = sheet.assessment.stages;
  const window = program.state === 'done' ? program.value.window : undefined;
  const flows = window === undefined ? undefined : windowFlows(sheet, window);
  if (window === undefined || flows === undefined) return undefined;
  return section(
    sheet.word('papers.backwash'),
    undefined,
    classed(
      'div',
      'two',
      html('div', {}, windowSide(sheet, window, flows)),
      html('div', {}, bedPicture(sheet)),
    ),
  );
};
