import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { figureText } from './derivation.ts';
import type { Sheet } from './sheet.ts';

const cellOf = (label: string, ...value: readonly Content[]): Markup =>
  html('div', {}, html('dt', {}, label), html('dd', {}, value));

/** What the likeliest build of the valve is called, feature by feature where it is settled. */
const build = (sheet: Sheet): string => {
  const { recognition } = sheet.assessment.stages;
  const settled = recognition.state === 'done' ? recognition.value.features : [];
  const names = settled.flatMap(({ feature, settled: value }) => {
    const values = sheet.family?.features.find(({ id }) => id === feature)?.values;
    const title = values?.find(({ id }) => id === value)?.title;
    return title === undefined ? [] : [sheet.text(title)];
  });
  const family =
    sheet.family === undefined ? sheet.word('papers.valve.unknown') : sheet.text(sheet.family.title);
  return [family, ...names].join(', ');
};

const tank = (sheet: Sheet): string | undefined => {
  const { figures } = sheet.assessment;
  const has = (id: string): boolean => Object.hasOwn(figures, id);
  if (!has('situation.bed.volume')) return undefined;
  const volume = figureText(sheet, 'situation.bed.volume');
  return has('situation.tank.diameter')
    ? sheet.word('papers.tank', { volume, diameter: figureText(sheet, 'situation.tank.diameter') })
    : sheet.word('papers.tank.bed', { volume });
};

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;

/** '2026-11-25' as people write it; anything else as it stands. */
export const dated = (sheet: Pick<Sheet, 'word'>, day: string): string => {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})/u.exec(day) ?? [];
  const name = months[Number(month) - 1];
  if (year === undefined || date === undefined || name === undefined) return day;
  return sheet.word('papers.date', {
    day: String(Number(date)),
    month: sheet.word(`papers.month.${name}`),
    year,
  });
};

const writer = ({ visit }: Sheet): string | undefined =>
  visit.by === undefined
    ? undefined
    : [visit.by.name, visit.by.company].filter((one) => one !== undefined).join(', ');

export const titleBlock = (sheet: Sheet, title: string): Markup => {
  const { visit, subject } = sheet;
  const unit = [subject?.name ?? visit.subject, visit.site.address]
    .filter((one) => one !== undefined)
    .join(', ');
  const by = writer(sheet);
  const holds = tank(sheet);
  return html(
    'header',
    { class: 'title-block' },
    html(
      'div',
      {},
      html('p', { class: 'second' }, title),
      html('h1', {}, visit.site.name),
      html('p', {}, unit),
      html('p', { class: 'second' }, build(sheet)),
      holds === undefined ? undefined : html('p', { class: 'second' }, holds),
    ),
    html(
      'dl',
      {},
      cellOf(
        sheet.word('papers.visit'),
        visit.date === undefined ? sheet.word('papers.no-date') : dated(sheet, visit.date),
      ),
      by === undefined ? undefined : cellOf(sheet.word('papers.by'), by),
      cellOf(sheet.word('papers.number'), visit.id),
    ),
  );
};

/** 'brinewright/0.1.0' without the name, which the words say. */
const versionOf = ({ assessment }: Sheet): string => assessment.engine.replace(/^.*\//u, '');

/** Signatures as given, or the line to sign on. */
export const signatureBlock = (sheet: Sheet): Markup => {
  const { visit } = sheet;
  const given = visit.signatures ?? [];
  const signed = given.map(({ name, at }) =>
    classed('div', 'signed', html('b', {}, name), html('span', {}, at === undefined ? '' : at.slice(11, 16))),
  );
  const line = classed(
    'div',
    'to-sign',
    html('span', {}, sheet.word('papers.signature.line', { site: visit.site.name })),
  );
  return html(
    'footer',
    { class: 'signatures' },
    html(
      'div',
      {},
      html('p', { class: 'second' }, sheet.word('papers.signature')),
      given.length === 0 ? line : signed,
    ),
    html(
      'dl',
      {},
      visit.handOver?.to === undefined
        ? undefined
        : cellOf(sheet.word('papers.handed-to'), visit.handOver.to),
      cellOf(
        sheet.word('papers.made-with'),
        sheet.word('papers.made-with.engine', { engine: versionOf(sheet) }),
      ),
    ),
  );
};
