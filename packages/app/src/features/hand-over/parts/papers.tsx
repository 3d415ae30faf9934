import { useEffect, useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import type { PaperKind, PaperView } from '../../../engine/views/paper-view.ts';
import { useReader } from '../../../offline/reader.ts';
import { Button, Choice, Section } from '../../../ui/index.ts';

export type PapersProps = {
  readonly stream: string;
  readonly visit: string;
  /** A paper left the device. */
  readonly onGiven: () => void;
};

const kinds: readonly PaperKind[] = ['report', 'work-sheet', 'leave-safe-card'];

/** A paper as one file, in the language and units of whoever gets it. */
export const Papers = (props: PapersProps) => {
  const word = useWord();
  const reader = useReader();
  const [paper, setPaper] = useState<PaperKind>('report');
  const [language, setLanguage] = useState(reader.language);
  const [system, setSystem] = useState(reader.system);
  return (
    <Section title={word('app.hand-over.share')}>
      <div className="stack lead">
        <Choice
          label={word('app.hand-over.share.which')}
          look="list"
          value={paper}
          onChange={setPaper}
          options={kinds.map((value) => ({ value, label: word(`app.hand-over.paper.${value}`) }))}
        />
        <Choice
          label={word('app.hand-over.share.language')}
          value={language}
          onChange={setLanguage}
          options={[
            { value: 'en', label: word('app.preferences.language.en') },
            { value: 'es', label: word('app.preferences.language.es') },
          ]}
        />
        <Choice
          label={word('app.hand-over.share.units')}
          value={system}
          onChange={setSystem}
          options={[
            { value: 'us', label: word('app.hand-over.units.us') },
            { value: 'metric', label: word('app.hand-over.units.metric') },
          ]}
        />
        <Made {...props} paper={paper} language={language} system={system} />
      </div>
    </Section>
  );
};

type MadeProps = PapersProps & {
  readonly paper: PaperKind;
  readonly language: 'en' | 'es';
  readonly system: 'us' | 'metric';
};

/** Made while it is looked at, so that saving and sharing wait for nothing. */
const Made = ({ onGiven, ...input }: MadeProps) => {
  const word = useWord();
  const { view } = useView('paper', input);
  const file = useFile(view);
  const [said, setSaid] = useState<string>();
  if (file === undefined) return <p className="note">{word('app.hand-over.making')}</p>;
  const given = (name: string): void => {
    onGiven();
    setSaid(word('app.hand-over.shared', { name }));
  };
  const share = async (): Promise<void> => {
    try {
      await navigator.share({ files: [file.file] });
      given(file.file.name);
    } catch {
      setSaid(word('app.hand-over.not-shared'));
    }
  };
  return (
    <div>
      <div className="buttons">
        <a
          className="button usual"
          href={file.address}
          download={file.file.name}
          onClick={() => given(file.file.name)}
        >
          {word('app.hand-over.save')}
        </a>
        {canShare(file.file) ? (
          <Button onPress={() => void share()}>{word('app.hand-over.send')}</Button>
        ) : null}
      </div>
      <p className="note" role="status">
        {said}
      </p>
    </div>
  );
};

const canShare = (file: File): boolean =>
  typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });

type Kept = { readonly file: File; readonly address: string };

const useFile = (view: PaperView | undefined): Kept | undefined => {
  const [kept, setKept] = useState<Kept>();
  useEffect(() => {
    if (view === undefined) return undefined;
    const file = new File([view.html], view.name, { type: 'text/html' });
    const address = URL.createObjectURL(file);
    setKept({ file, address });
    return () => URL.revokeObjectURL(address);
  }, [view]);
  return view === undefined ? undefined : kept;
};
