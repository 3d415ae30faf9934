import { useId } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { FileView } from '../../../engine/views/definitions-view.ts';
import { Problem, Row, Rows, Section, Told } from '../../../ui/index.ts';
import type { Kept } from '../commands/keep-definition.ts';
import type { DefinitionsScreenProps } from '../screens/definitions-screen.tsx';
import { Issues } from './issues.tsx';

/** Files of one's own: kept whether sound or not, with what is wrong and how to mend it. */
export const OwnFiles = ({ view, kept, onAdd }: DefinitionsScreenProps) => {
  const word = useWord();
  return (
    <Section title={word('app.definitions.files')}>
      <Choose onAdd={onAdd} />
      <div aria-live="polite">
        {kept.map((one) => (
          <WhatBecame key={one.name} kept={one} />
        ))}
      </div>
      {view.files.length === 0 ? <p className="note lead">{word('app.definitions.files.none')}</p> : null}
      {view.files.map((file) => (
        <OwnFile key={file.name} file={file} />
      ))}
    </Section>
  );
};

const Choose = ({ onAdd }: Pick<DefinitionsScreenProps, 'onAdd'>) => {
  const word = useWord();
  const id = useId();
  return (
    <div className="file-choice">
      <input
        id={id}
        className="only-heard"
        type="file"
        accept=".yaml,.yml,application/yaml,text/yaml"
        multiple
        onChange={(event) => {
          onAdd([...(event.currentTarget.files ?? [])]);
          event.currentTarget.value = '';
        }}
      />
      <label className="button usual" htmlFor={id}>
        {word('app.definitions.add')}
      </label>
      <p className="note lead">{word('app.definitions.add.under')}</p>
    </div>
  );
};

const WhatBecame = ({ kept: { state, name } }: { readonly kept: Kept }) => {
  const word = useWord();
  if (state === 'kept') return <Told>{word('app.definitions.added', { name })}</Told>;
  return (
    <Problem
      what={word(state === 'too-large' ? 'app.definitions.too-large' : 'app.definitions.not-read', { name })}
    />
  );
};

const OwnFile = ({ file: { name, isUsed, issues } }: { readonly file: FileView }) => {
  const word = useWord();
  return (
    <div className="own-file">
      <Rows>
        <Row
          title={name}
          at={
            <span className="note">
              {word(isUsed ? 'app.definitions.file.used' : 'app.definitions.file.left-out')}
            </span>
          }
        />
      </Rows>
      <Issues issues={issues} />
    </div>
  );
};
