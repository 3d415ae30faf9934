import { useWord } from '../../../app/words/use-word.ts';
import type { DefinitionsView } from '../../../engine/views/definitions-view.ts';
import { Heading, Row, Rows, Section, Sheet } from '../../../ui/index.ts';
import type { Kept } from '../commands/keep-definition.ts';
import { FamilyHead, FamilyLists } from '../parts/family.tsx';
import { OwnFiles } from '../parts/own-files.tsx';
import '../definitions.css';

export type DefinitionsScreenProps = {
  readonly view: DefinitionsView;
  /** What became of the files chosen last. */
  readonly kept: readonly Kept[];
  readonly back: { readonly to: string; readonly name: string };
  readonly onAdd: (files: readonly File[]) => void;
};

/** All families, or one of them opened. */
export const DefinitionsScreen = (props: DefinitionsScreenProps) => {
  const { view, back } = props;
  const word = useWord();
  const { family } = view;
  const title = { name: word('app.definitions.title'), under: family?.title };
  if (family === undefined)
    return (
      <Sheet
        title={title}
        back={back}
        wide={{ doing: <Families view={view} />, why: <OwnFiles {...props} /> }}
      />
    );
  return (
    <Sheet
      title={title}
      back={back}
      wide={{ doing: <FamilyHead family={family} />, picture: <FamilyLists family={family} /> }}
    />
  );
};

const Families = ({ view }: { readonly view: DefinitionsView }) => {
  const word = useWord();
  return (
    <>
      <Heading>{word('app.definitions.title')}</Heading>
      <p className="note lead">{word('app.definitions.under')}</p>
      <Section title={word('app.definitions.all')}>
        <Rows>
          {view.families.map(({ id, title, isOwn, ...counts }) => (
            <Row
              key={id}
              heading
              title={title}
              under={word('app.definitions.counts', {
                variants: counts.variants,
                parts: counts.parts,
                tells: counts.tells,
                faults: counts.faults,
              })}
              at={isOwn ? <span className="note">{word('app.definitions.own')}</span> : undefined}
              to={`/definitions/${encodeURIComponent(id)}`}
            />
          ))}
        </Rows>
      </Section>
    </>
  );
};
