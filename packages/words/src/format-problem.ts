import type { QuantityKind, QuantityProblem } from '@brinewright/units';
import type { MessageKey } from './catalogue.ts';
import { type Message, message } from './message.ts';

/** What is wrong, and how to mend it. */
export type ProblemMessages = { readonly message: Message; readonly mend: Message };

/** The words for a quantity or range that could not be read. Field, file and line are the caller's to add. */
export const quantityProblemMessages = (problem: QuantityProblem): ProblemMessages => ({
  message: wrong(problem),
  mend: mend(problem),
});

/** The name of a kind as a noun without article, to stand inside a sentence. */
export const kindName = (kind: QuantityKind): Message => {
  const key: MessageKey = `units.kind.${kind}`;
  return message(key);
};

const wrong = (problem: QuantityProblem): Message => {
  const { text, kind } = problem;
  switch (problem.what) {
    case 'unknown-unit':
      return message('units.problem.unknown-unit', { text, unit: problem.unit });
    case 'wrong-kind':
      return message('units.problem.wrong-kind', {
        text,
        unit: problem.unit,
        measures: kindName(problem.measures[0] ?? kind),
        kind: kindName(kind),
      });
    case 'negative':
      return kind === 'temperature'
        ? message('units.problem.too-cold', { text })
        : message('units.problem.negative', { text, kind: kindName(kind) });
    default:
      return message(`units.problem.${problem.what}`, { text });
  }
};

const mend = (problem: QuantityProblem): Message => {
  switch (problem.what) {
    case 'decimal-comma':
    case 'range-upside-down':
      return message('units.mend.instead', { text: problem.mended });
    case 'not-a-range':
      return message('units.mend.instead', { text: problem.example });
    case 'zero-step':
      return message('units.mend.step');
    case 'not-finite':
      return message('units.mend.finite-number');
    case 'negative':
      return problem.kind === 'temperature'
        ? message('units.mend.another-temperature', { units: problem.units.join(', ') })
        : message('units.mend.from-zero');
    default:
      return howToWrite(problem);
  }
};

const howToWrite = ({ kind, units }: QuantityProblem): Message =>
  units.length === 0
    ? message('units.mend.plain-number')
    : message('units.mend.unit', { kind: kindName(kind), units: units.join(', ') });
