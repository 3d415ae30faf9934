import type { BackwashWindow, Neighbour, ProgramAdvice, TimedSetting } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { bullets, capital, paragraph, stacked } from '../text/lines.ts';
import { type Row, table } from '../text/table.ts';
import { columns, widthOf } from '../text/wrap.ts';
import { rangeShown, shown, shownAlike, type View } from '../view.ts';
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
      [
        ...(value.window === undefined ? [] : windowLines(view, value.window)),
        ...sentences(view, value.notes.filter(isOfWindow)),
      ],
      sentences(
        view,
        value.notes.filter((note) => !isFinding(note) && !isOfWindow(note)),
      ),
      doses(view, value),
      year(view, value),
    ),
  );

type Note = ProgramAdvice['notes'][number];

/** What the found settings do is said before what to set. */
const isFinding = ({ key }: Note): boolean => key.startsWith('program.found-');

/** What is too weak or too strong, and what to fit, stands beneath the window. */
const isOfWindow = ({ key }: Note): boolean => key.startsWith('program.window.');

/** Step by step: found, exact, set; beneath it both neighbouring times and what they do. */
const settings = (view: View, { settings: timed, volume, days }: ProgramAdvice): string[] => {
  if (timed.length === 0 && volume === undefined && days === undefined) return [];
  const rows: Row[] = timed.map((one) => settingRow(view, one));
  if (volume !== undefined)
    rows.push({
      cells: [
        view.word('papers.setting.volume'),
        shown(view, volume.found),
        '',
        shown(view, volume.set),
        volume.changed ? view.word('cli.program.changed') : '',
      ],
    });
  if (days !== undefined)
    rows.push({
      cells: [
        view.word('papers.setting.days'),
        shown(view, days.found),
        '',
        shown(view, days.set),
        days.changed ? view.word('cli.program.changed') : '',
      ],
      under: [
        days.expected === undefined
          ? view.word('cli.program.days-limit', { limit: shown(view, days.limit) })
          : view.word('cli.program.days-expected', { expected: shown(view, days.expected) }),
      ],
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
  under: onOneLine([below, above].flatMap((one) => neighbour(view, one))),
});

/** Side by side where there is room, else one beneath the other. */
const onOneLine = (texts: readonly string[]): readonly string[] => {
  const joined = texts.join(' · ');
  if (widthOf(joined) > columns - 4) return texts;
  return joined === '' ? [] : [joined];
};

const neighbour = (view: View, one: Neighbour | undefined): readonly string[] => {
  if (one === undefined || one.does.length === 0) return [];
  const does = one.does.map(({ what, figure }) =>
    view.word(`papers.neighbour.${what}`, { value: shown(view, figure) }),
  );
  return [`${view.quantity(quantity('time', one.time))}: ${does.join(', ')}`];
};

const once = (view: View, { once: messages }: ProgramAdvice): string[] => bullets(messages.map(view.say));

const windowLines = (view: View, window: BackwashWindow): string[] => {
  if (window.state === 'empty') {
    const edges = { floor: shown(view, window.floor), ceiling: shown(view, window.ceiling) };
    return [
      ...paragraph(`${view.word('cli.program.window-empty', edges)} ${view.say(window.why)}`),
      ...bullets(window.choices.map(view.say)),
    ];
  }
  const { lower, upper } = rangeShown(view, window.floor, window.ceiling);
  const range = view.word('cli.program.window', {
    floor: lower,
    ceiling: upper,
    aim: shown(view, window.aim),
  });
  const fitted = view.word(`cli.program.window-${window.fits}`, { fitted: shown(view, window.fitted) });
  return paragraph(`${range} ${fitted}`);
};

const doses = (view: View, { doses: all }: ProgramAdvice): string[] => {
  if (all.length === 0) return [];
  const column = (key: 'dose' | 'capacity' | 'volume' | 'salt'): readonly string[] =>
    shownAlike(
      view,
      all.map((one) => one[key]),
    );
  const shownIn = [column('dose'), column('capacity'), column('volume'), column('salt')];
  return table(
    [
      { title: capital(view.word('papers.dose')), align: 'right' },
      { title: capital(view.word('papers.dose.capacity')), align: 'right' },
      { title: capital(view.word('papers.dose.volume')), align: 'right' },
      { title: capital(view.word('papers.dose.salt')), align: 'right' },
      { title: '' },
    ],
    all.map(({ chosen }, row) => ({
      cells: [...shownIn.map((cells) => cells[row] ?? ''), chosen ? view.word('cli.program.chosen') : ''],
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
      cells: [view.word(`papers.year.${what}`), ...shownAlike(view, [found, set, difference])],
    })),
  );
};
