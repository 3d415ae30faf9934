import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { HandOverView } from '../../../engine/views/hand-over-view.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Field, Heading, Notice, Sheet } from '../../../ui/index.ts';
import { adviceGiven, handOver, sayAgain, type Told } from '../commands/hand-over.ts';
import { Handed, KeptFigures } from '../parts/handed.tsx';
import { Papers } from '../parts/papers.tsx';
import { NotesAndGaps, RecordOfVisit, StillOpen } from '../parts/record.tsx';
import { Remarks } from '../parts/remarks.tsx';

type Props = StageProps<HandOverView>;

/** The last stage; a visit that was handed over keeps what it said then. */
export const HandOverScreen = (props: Props) =>
  props.view.handed === undefined ? (
    <ToHandOver {...props} />
  ) : (
    <HandedOver {...props} handed={props.view.handed} />
  );

const nothing: Told = { to: '', said: '', signed: '' };

const ToHandOver = ({ view, about, record, nav }: Props) => {
  const word = useWord();
  const [told, setTold] = useDraft(`${about.visit} hand-over`, nothing);
  const [isAsking, setAsking] = useState(false);
  const give = async (): Promise<void> => {
    if (view.remarks.newer.length > 0 && !isAsking) return setAsking(true);
    await record(handOver(about, told, view.shown, new Date().toISOString()));
    setTold(nothing);
  };
  const head = (
    <>
      <Heading>{word('app.hand-over.title')}</Heading>
      {isAsking ? <AskNewer onYes={() => void give()} onNo={() => setAsking(false)} /> : null}
      <StillOpen open={view.open} onGo={nav.toStage} />
      <Remarks remarks={view.remarks} onKeep={(again) => void record(sayAgain(about, again))} />
    </>
  );
  const form = <ToldForm told={told} onChange={setTold} />;
  const visit = <RecordOfVisit view={view} />;
  const papers = <PapersAndNotes view={view} about={about} record={record} />;
  return (
    <Sheet
      wide={{
        doing: (
          <>
            {head}
            {form}
          </>
        ),
        picture: visit,
        why: papers,
      }}
      actions={
        <Button kind="main" onPress={() => void give()}>
          {word('app.hand-over.now')}
        </Button>
      }
    >
      {head}
      {visit}
      {form}
      {papers}
    </Sheet>
  );
};

const AskNewer = ({ onYes, onNo }: { readonly onYes: () => void; readonly onNo: () => void }) => {
  const word = useWord();
  return (
    <div role="alert">
      <Notice
        title={word('app.hand-over.newer.ask')}
        actions={
          <>
            <Button onPress={onYes}>{word('app.hand-over.newer.yes')}</Button>
            <Button onPress={onNo}>{word('app.hand-over.newer.no')}</Button>
          </>
        }
      >
        {word('app.hand-over.newer.why')}
      </Notice>
    </div>
  );
};

const ToldForm = ({ told, onChange }: { readonly told: Told; readonly onChange: (told: Told) => void }) => {
  const word = useWord();
  return (
    <div className="section stack">
      <Field label={word('app.hand-over.to')} value={told.to} onChange={(to) => onChange({ ...told, to })} />
      <Field
        label={word('app.hand-over.told')}
        value={told.said}
        hint={word('app.hand-over.told.hint')}
        lines
        onChange={(said) => onChange({ ...told, said })}
      />
      <Field
        label={word('app.hand-over.signed')}
        value={told.signed}
        hint={word('app.hand-over.signed.hint')}
        onChange={(signed) => onChange({ ...told, signed })}
      />
    </div>
  );
};

const PapersAndNotes = ({ view, about, record }: Pick<Props, 'view' | 'about' | 'record'>) => (
  <>
    <Papers
      stream={about.stream}
      visit={about.visit}
      onGiven={() => void record(adviceGiven(about, view.shown))}
    />
    <NotesAndGaps view={view} />
  </>
);

const HandedOver = (props: Props & { readonly handed: NonNullable<HandOverView['handed']> }) => {
  const { view, about, record, nav, handed } = props;
  const word = useWord();
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{word('app.hand-over.title.handed')}</Heading>
            <Handed
              handed={handed}
              signed={view.signatures.map(({ name, at }) => (at === undefined ? name : `${name}, ${at}`))}
            />
            <Remarks remarks={view.remarks} onKeep={(again) => void record(sayAgain(about, again))} />
            <KeptFigures handed={handed} />
          </>
        ),
        picture: <RecordOfVisit view={view} />,
        why: <PapersAndNotes view={view} about={about} record={record} />,
      }}
      actions={
        <Button kind="main" onPress={nav.toStart}>
          {word('app.hand-over.back')}
        </Button>
      }
    />
  );
};
