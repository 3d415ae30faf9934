import { alike, quantityAt, type Sheet } from '@brinewright/papers';
import type { ProgramAdvice } from '@brinewright/service';
import { toUnit } from '@brinewright/units';

/** A salt dose to choose, with what it costs and what it softens. */
export type DoseView = {
  /** As a decision holds it: '8 lb/ft3'. */
  readonly value: string;
  readonly dose: string;
  readonly salt: string;
  readonly capacity: string;
  readonly volume: string;
  readonly isChosen: boolean;
};

const columns = ['dose', 'salt', 'capacity', 'volume'] as const;

/** Column by column, so that one is compared with the next in the same unit. */
export const doseViews = (sheet: Sheet, { doses }: ProgramAdvice): readonly DoseView[] => {
  const [dose = [], salt = [], capacity = [], volume = []] = columns.map((column) =>
    alike(
      sheet,
      doses.map((one) => one[column]),
    ),
  );
  return doses.flatMap((one, row) => {
    const value = quantityAt(sheet, one.dose);
    return value === undefined
      ? []
      : [
          {
            value: `${Number(toUnit(value, 'lb/ft3').toPrecision(9))} lb/ft3`,
            dose: dose[row] ?? '',
            salt: salt[row] ?? '',
            capacity: capacity[row] ?? '',
            volume: volume[row] ?? '',
            isChosen: one.chosen,
          },
        ];
  });
};
