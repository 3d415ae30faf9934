import type { BackwashWindow, Neighbour, ProgramAdvice, TimedSetting } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { bullets, capital, paragraph, stacked } from '../text/lines.ts';
import { type Row, table } from '../text/table.ts';
import { shown, type View } from '../view.ts';
import { sentences, staged } from './common.ts';
import { measureFirstLines, ofSettings, ofWindow } from './measure-first.ts';

export const program = (view: View): string[] =>
  staged(view, view.assessment.stages.program, (value) =>
    stacked(
      sentences(view, value.notes.filter(isFinding)),
      measureFirstLines(view, ofSettings(view, value)),
      settings(view, value),
      once(view, value),
      measureFirstLines(view, ofWindow(view, value)),
      value.window === undefined ? [] : windowLines(view, value.window),
      sentences(
        view,
        value.notes.filter((note) => !isFinding(note)),
      ),
      doses(view, value),
      year(view, value),
    ),
  );

/** What the found settings do is said before what to set. */
const isFinding = ({ key }: { readonly key: string }): boolean => key.startsWith('program.found-');

/** Step by step: found, exact, set; beneath it both neighbouring times and what they do. */
const settings = (view: View, { settings: timed, volume, days }: ProgramAdvice): string[] => {
  if (timed.length === 0 && volume === undefined && days === undefined) return [];
  const rows: Row[] = timed.map((one) => settingRow(view, one));
  if (volume !== undefined)
    rows.push({
      cells: [view.word('papers.setting.volume'), shown(view, volume.found), '', shown(view, volume.set), ''],
    });
  if (days !== undefined)
    rows.push({
      cells: [view.word('papers.setting.days'), '', '', shown(view, days.set), ''],
      under: [view.word('cli.program.days-limit', { limit: shown(view, days.limit) })],
    });
  return table(
    [
      { title: view.word('cli.program.step') },
      { title: capital(view.word('papers.as-found')), align: 'right' },
      { title: capital(view.word('papers.exact')), align: 'right' },
      { title: capital(view.word('papers.as-set')), align: 'right' },
      { title: '' },
    ],
    rows,
  );
};

const settingRow = (view: View, { step, found, exact, set, below, above, changed }: TimedSetting): Row => ({
  cells: [
    view.word(`program.step.${step}`),
    shown(view, found),
    shown(view, exact),
    shown(view, set),
    changed ? view.word('cli.program.changed') : '',
  ],
  under: [[below, above].flatMap((one) => neighbour(view, one)).join('  ·  ')].filter((line) => line !== ''),
});

const neighbour = (view: View, one: Neighbour | undefined): readonly string[] => {
  if (one === undefined || one.does.length === 0) return [];
  const does = one.does.map(({ what, figure }) =>
    view.word(`papers.neighbour.${what}`, { value: shown(view, figure) }),
  );
  return [`${view.quantity(quantity('time', one.time))}: ${does.join(', ')}`];
};

const once = (view: View, { once: messages }: ProgramAdvice): string[] => bullets(messages.map(view.say));

const windowLines = (view: View, window: BackwashWindow): string[] => {
  const edges = { floor: shown(view, window.floor), ceiling: shown(view, window.ceiling) };
  if (window.state === 'empty')
    return [
      ...paragraph(`${view.word('cli.program.window-empty', edges)} ${view.say(window.why)}`),
      ...bullets(window.choices.map(view.say)),
    ];
  const { fits, choice } = window;
  const fitted = view.word(`cli.program.window-${fits}`, { fitted: shown(view, window.fitted) });
  const control = view.family?.controls.drain.find(({ id }) => id === choice);
  const better =
    control === undefined || fits === 'inside'
      ? ''
      : ` ${view.word('cli.program.window-choice', { control: control.title, rate: control.rate })}`;
  return paragraph(
    `${view.word('cli.program.window', { ...edges, aim: shown(view, window.aim) })} ${fitted}${better}`,
  );
};

const doses = (view: View, { doses: all }: ProgramAdvice): string[] => {
  if (all.length === 0) return [];
  return table(
    [
      { title: capital(view.word('papers.dose')), align: 'right' },
      { title: capital(view.word('papers.dose.capacity')), align: 'right' },
      { title: capital(view.word('papers.dose.volume')), align: 'right' },
      { title: capital(view.word('papers.dose.salt')), align: 'right' },
      { title: '' },
    ],
    all.map(({ dose, capacity, volume, salt, chosen }) => ({
      cells: [
        shown(view, dose),
        shown(view, capacity),
        shown(view, volume),
        shown(view, salt),
        chosen ? view.word('cli.program.chosen') : '',
      ],
    })),
  );
};

const year = (view: View, { year: rows }: ProgramAdvice): string[] => {
  if (rows.length === 0) return [];
  return table(
    [
      { title: view.word('papers.year') },
      { title: capital(view.word('papers.as-found')), align: 'right' },
      { title: capital(view.word('papers.as-set')), align: 'right' },
      { title: view.word('cli.program.saved'), align: 'right' },
    ],
    rows.map(({ what, found, set, difference }) => ({
      cells: [
        view.word(`papers.year.${what}`),
        shown(view, found),
        shown(view, set),
        shown(view, difference),
      ],
    })),
  );
};
