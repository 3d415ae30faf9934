import type { ReactNode } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { WhatIf } from '../../../engine/views/what-if/numbers.ts';
import type { WhatIfField } from '../../../engine/views/what-if-view.ts';
import { Button, Heading, QuantityField, Section, Sheet, useWide } from '../../../ui/index.ts';
import { textOf } from '../commands/text-of.ts';
import { ShareLink } from '../parts/share-link.tsx';
import '../what-if.css';

export type WhatIfScreenProps = {
  readonly numbers: WhatIf;
  readonly fields: readonly WhatIfField[];
  readonly back: { readonly to: string; readonly name: string };
  readonly onChange: (numbers: WhatIf) => void;
  /** The program that the numbers make, its drawings, and its notes. */
  readonly program: ReactNode;
  readonly pictures: ReactNode;
  readonly notes: ReactNode;
};

/** Numbers on one side, the program on the other. */
export const WhatIfScreen = (props: WhatIfScreenProps) => {
  const { back, program, pictures, notes } = props;
  const word = useWord();
  const isWide = useWide();
  return (
    <Sheet
      title={{ name: word('app.what-if.title'), under: word('app.what-if.numbers') }}
      back={back}
      wide={{
        doing: (
          <>
            <Heading>{word('app.what-if.title')}</Heading>
            <p className="note lead">{word('app.what-if.under')}</p>
            <Numbers {...props} />
            {isWide ? null : program}
          </>
        ),
        picture: (
          <>
            {isWide ? program : null}
            {pictures}
          </>
        ),
        why: (
          <>
            <p className="note">{word('app.what-if.taken')}</p>
            {notes}
          </>
        ),
      }}
      actions={<Actions {...props} />}
    />
  );
};

const Numbers = ({ numbers, fields, onChange }: WhatIfScreenProps) => {
  const word = useWord();
  return (
    <Section title={word('app.what-if.numbers')}>
      <div className="what-if-fields">
        {fields.map((field) => (
          <QuantityField
            key={field.name}
            label={field.label}
            kind={field.kind}
            units={field.units}
            size="small"
            mayLack={false}
            value={{ figure: field.figure, unit: field.unit, known: 'value' }}
            hint={field.wrong}
            onChange={({ figure, unit }) => onChange({ ...numbers, [field.name]: textOf(figure, unit) })}
          />
        ))}
      </div>
    </Section>
  );
};

const Actions = ({ onChange }: WhatIfScreenProps) => {
  const word = useWord();
  return (
    <>
      <Button onPress={() => onChange({})}>{word('app.what-if.clear')}</Button>
      <ShareLink />
    </>
  );
};
