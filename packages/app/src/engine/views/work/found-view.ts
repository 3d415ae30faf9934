import type { Sheet } from '@brinewright/papers';
import type { FoundView } from './work-types.ts';

/** What can be written down when something turns up: a tell of the build, a look of the diagnosis, or a note. */
export const foundView = (sheet: Sheet): FoundView => {
  const { family, visit, text, subject } = sheet;
  return {
    note: visit.note === undefined ? '' : text(visit.note),
    tells: (family?.tells ?? []).flatMap((tell) =>
      tell.kind === 'seen'
        ? [
            {
              id: tell.id,
              ask: text(tell.ask),
              answers: tell.answers.map(({ id, title }) => ({ id, title: text(title) })),
            },
          ]
        : [],
    ),
    looks: (family?.tests ?? [])
      .filter(
        ({ reading, kinds }) =>
          reading === undefined && (subject === undefined || kinds.includes(subject.kind)),
      )
      .map(({ id, ask, outcomes }) => ({
        id,
        ask: text(ask),
        answers: outcomes.map((outcome) => ({ id: outcome.id, title: text(outcome.title) })),
      })),
  };
};
