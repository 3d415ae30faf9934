import type { QuantityKind } from '@brinewright/units';
import { useWord } from '../../../app/words/use-word.ts';
import { Button, Notice, unitShown } from '../../../ui/index.ts';
import type { OddReading } from '../odd-reading.ts';

type Props = {
  readonly odd: OddReading | undefined;
  readonly kind: QuantityKind;
  readonly figure: string;
  readonly shown: string;
  readonly onUnit: (unit: string) => void;
};

/** Asks, and offers the unit in which the figure would be usual. */
export const OddNotice = ({ odd, kind, figure, shown, onUnit }: Props) => {
  const word = useWord();
  const { unit } = odd ?? {};
  return (
    <div aria-live="polite">
      {odd === undefined ? null : (
        <Notice
          title={word('app.readings.odd', { reading: shown, range: odd.usual })}
          actions={
            unit === undefined ? undefined : (
              <Button onPress={() => onUnit(unit)}>{`${figure} ${unitShown(kind, unit)}`}</Button>
            )
          }
        >
          {word(unit === undefined ? 'app.readings.odd.again' : 'app.readings.odd.unit')}
        </Notice>
      )}
    </div>
  );
};
