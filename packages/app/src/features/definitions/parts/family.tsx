import { useWord } from '../../../app/words/use-word.ts';
import type { FamilyView, TextRow } from '../../../engine/views/definitions/family-view.ts';
import { Heading, Row, Rows, Section } from '../../../ui/index.ts';
import { Issues } from './issues.tsx';

/** What a family is, its features, and what a look through it finds. */
export const FamilyHead = ({ family }: { readonly family: FamilyView }) => {
  const word = useWord();
  return (
    <>
      <Heading>{family.title}</Heading>
      <p className="note lead">
        {word('app.definitions.variants', { count: family.variants })}.{' '}
        {word('app.definitions.source', { source: family.source })}.{' '}
        {family.like === undefined ? '' : `${word('app.definitions.like', { like: family.like })}.`}
      </p>
      <Features family={family} />
      <Section title={word('app.definitions.lint')}>
        {family.lint.length === 0 ? <p className="note">{word('app.definitions.lint.none')}</p> : null}
        <Issues issues={family.lint} />
      </Section>
    </>
  );
};

const Features = ({ family }: { readonly family: FamilyView }) => {
  const word = useWord();
  if (family.features.length === 0) return null;
  return (
    <Section title={word('app.definitions.features')}>
      <Rows>
        {family.features.map(({ name, values }) => (
          <Row
            key={name}
            title={name}
            under={values.map((value) => `${value.name} ${value.share}`).join(', ')}
          />
        ))}
      </Rows>
    </Section>
  );
};

/** Tells, parts and faults, each list to be opened. */
export const FamilyLists = ({ family }: { readonly family: FamilyView }) => {
  const word = useWord();
  const said = family.looksWrong.map((title) => ({ id: title, title }));
  return (
    <>
      <List name={word('app.definitions.tells')} rows={family.tells} isOpen />
      <List name={word('app.definitions.parts')} rows={family.parts} />
      <List name={word('app.definitions.faults')} rows={family.faults} />
      <List name={word('app.definitions.looks-wrong')} rows={said} />
    </>
  );
};

const List = (props: {
  readonly name: string;
  readonly rows: readonly TextRow[];
  readonly isOpen?: boolean;
}) => {
  const word = useWord();
  const { name, rows, isOpen = false } = props;
  if (rows.length === 0) return null;
  return (
    <details className="list" open={isOpen}>
      <summary>
        <h2>{word('app.definitions.count', { name, count: rows.length })}</h2>
      </summary>
      <Rows>
        {rows.map(({ id, title, under }) => (
          <Row key={id} title={title} under={under} />
        ))}
      </Rows>
    </details>
  );
};
