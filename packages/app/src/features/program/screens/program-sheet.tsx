import type { Draft } from '@brinewright/journal';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { ProgramView } from '../../../engine/views/program-view.ts';
import { Button, Figure, Heading, InHand, Notice, Section, Sheet, Told } from '../../../ui/index.ts';
import { decideDose } from '../commands/decide-dose.ts';
import { setAsAdvised } from '../commands/settings.ts';
import { Gaps } from '../parts/behind.tsx';
import { Doses } from '../parts/doses.tsx';
import { Glance } from '../parts/glance.tsx';
import { KeyIn } from '../parts/key-in.tsx';
import { Year } from '../parts/year.tsx';
import { ProgramNotes, ProgramPictures } from './program-result.tsx';

export type ProgramSheetProps = StageProps<ProgramView> & {
  readonly write: (drafts: readonly Draft[]) => Promise<void>;
  readonly undo: (() => Promise<void>) | undefined;
};

/** Found and set side by side, what it comes to, and why. */
export const ProgramSheet = (props: ProgramSheetProps) => {
  const { view, isStale } = props;
  return (
    <Sheet
      wide={{
        doing: (
          <div className={isStale ? 'stale' : undefined} aria-busy={isStale}>
            <Doing {...props} />
          </div>
        ),
        picture: <ProgramPictures view={view} />,
        why: <WhySide view={view} />,
      }}
      actions={<Actions {...props} />}
    />
  );
};

const Doing = ({ view, about, write, undo, nav }: ProgramSheetProps) => {
  const gaps = <Gaps view={view} to={`/unit/${about.stream}/${about.conditioner}`} />;
  return (
    <>
      <Title view={view} />
      <Doses
        doses={view.doses}
        isDecided={view.isDoseDecided}
        onChoose={(value) => void write(decideDose(about, value))}
      />
      <AskFound view={view} onWrite={() => nav.toPart('found')} />
      {view.isBlocked ? gaps : null}
      <KeyIn view={view} />
      <Once view={view} />
      <Glance items={view.glance} />
      <Findings view={view} />
      {view.isBlocked ? null : gaps}
      <WhatWasSet
        view={view}
        undo={undo}
        onOther={() => nav.toPart('set')}
        onFound={() => nav.toPart('found')}
      />
    </>
  );
};

const Title = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  return view.dose === undefined ? (
    <Heading>{word('app.program.title')}</Heading>
  ) : (
    <div className="dose-title">
      <Heading>
        {word('app.program.dose')} <span className="only-heard">{view.dose.text}</span>
      </Heading>
      <Figure text={view.dose.text} derivation={view.dose.derivation} size="mid" />
    </div>
  );
};

const AskFound = ({ view, onWrite }: { readonly view: ProgramView; readonly onWrite: () => void }) => {
  const word = useWord();
  return view.isFound ? null : (
    <Notice
      title={word('app.program.ask-found')}
      actions={<Button onPress={onWrite}>{word('app.program.found-title')}</Button>}
    >
      {word('app.program.ask-found.why')}
    </Notice>
  );
};

const Findings = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  const said = [...view.findings, ...view.measureFirst];
  return said.length === 0 ? null : (
    <Section title={word('app.program.findings')}>
      {said.map((sentence) => (
        <p key={sentence} className="lead">
          {sentence}
        </p>
      ))}
    </Section>
  );
};

const Once = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  return view.once.length === 0 ? null : (
    <InHand tag={word('app.program.once')}>
      {view.once.map((sentence) => (
        <p key={sentence} className="lead">
          {sentence}
        </p>
      ))}
    </InHand>
  );
};

const WhatWasSet = (props: {
  readonly view: ProgramView;
  readonly undo: (() => Promise<void>) | undefined;
  readonly onOther: () => void;
  readonly onFound: () => void;
}) => {
  const { view, undo, onOther, onFound } = props;
  const word = useWord();
  if (!view.isFound && view.rows.length === 0 && undo === undefined) return null;
  const differs = view.rows.some(({ otherwise }) => otherwise !== undefined);
  return (
    <div className="section">
      {view.isSet ? <Told>{word(differs ? 'app.program.done-otherwise' : 'app.program.done')}</Told> : null}
      <div className="buttons">
        {view.isFound ? <Button onPress={onFound}>{word('app.program.found-again')}</Button> : null}
        {view.rows.length === 0 ? null : <Button onPress={onOther}>{word('app.program.set-title')}</Button>}
        {undo === undefined ? null : <Button onPress={() => void undo()}>{word('app.program.undo')}</Button>}
      </div>
    </div>
  );
};

const WhySide = ({ view }: { readonly view: ProgramView }) => (
  <>
    <Year view={view} />
    <ProgramNotes view={view} />
  </>
);

const Actions = ({ view, about, write, nav }: ProgramSheetProps) => {
  const word = useWord();
  if (view.isSet)
    return (
      <Button kind="main" onPress={() => nav.toStage('prove')}>
        {word('app.program.to-prove')}
      </Button>
    );
  return (
    <Button
      kind="main"
      onPress={() => void write(setAsAdvised(about, view.rows))}
      blocked={
        view.rows.some(({ advised }) => advised !== undefined) ? undefined : word('app.program.nothing')
      }
    >
      {word('app.program.keyed-in')}
    </Button>
  );
};
