import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import { type CutChoice, cutChoiceOf, partOfCut } from '../../../engine/views/cutaway/address.ts';
import type { CutawayView, NoCutaway } from '../../../engine/views/cutaway-view.ts';
import { Button, Empty, Facts, Heading, Icon, Section, Sheet, useWide } from '../../../ui/index.ts';
import { Pistons, Seals, Stops } from '../parts/choosers.tsx';
import { Fitting } from '../parts/fitting.tsx';
import '../cutaway.css';

export type CutawayProps = Pick<StageProps<CutawayView | NoCutaway>, 'view' | 'nav'>;

/** The valve cut open. Stop, torn seal and piston stand in the address, so that a state can be gone back to. */
export const CutawayScreen = ({ view, nav }: CutawayProps) => {
  const choose = (change: CutChoice): void =>
    nav.toPart(partOfCut({ ...cutChoiceOf(nav.part), ...stopOf(view), ...change }));
  return view.state === 'none' ? <NoCut why={view.why} /> : <Cut view={view} onChoose={choose} />;
};

/** A seal is torn at the stop in view, not at the one where its tear would show first. */
const stopOf = (view: CutawayView | NoCutaway): CutChoice =>
  view.state === 'none' ? {} : { stop: view.stop };

const NoCut = ({ why }: { readonly why: string }) => {
  const word = useWord();
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{word('app.cutaway.title')}</Heading>
            <Empty title={word('app.cutaway.none')} under={why} />
          </>
        ),
      }}
    />
  );
};

type CutProps = { readonly view: CutawayView; readonly onChoose: (change: CutChoice) => void };

const Cut = (props: CutProps) => {
  const { view, onChoose } = props;
  const word = useWord();
  const isWide = useWide();
  const drawing = <Fitting drawings={view.drawings} twin={view.twin} />;
  const facts = view.facts.length === 0 ? null : <Facts items={view.facts} />;
  const heading = <Heading>{view.title}</Heading>;
  return (
    <Sheet
      wide={{
        doing: (
          <>
            {heading}
            <Stops {...props} />
            {isWide ? null : drawing}
            {facts}
            <Passes view={view} />
            <Seals {...props} />
            <Pistons {...props} />
            <Build view={view} />
          </>
        ),
        picture: isWide ? (
          <>
            {drawing}
            <Run view={view} />
          </>
        ) : undefined,
      }}
      actions={
        <Button kind="main" onPress={() => onChoose({ stop: view.next.id })}>
          {word('app.cutaway.next', { stop: view.next.name })}
          <Icon name="on" />
        </Button>
      }
    />
  );
};

/** Where in the regeneration this step lies. */
const Run = ({ view: { timeline } }: { readonly view: CutawayView }) => {
  const word = useWord();
  return timeline === undefined ? null : (
    <Section title={word('app.cutaway.timeline')}>
      <Fitting drawings={timeline.drawings} twin={timeline.twin} />
    </Section>
  );
};

const Passes = ({ view }: { readonly view: CutawayView }) => {
  const word = useWord();
  return (
    <Section title={word('app.cutaway.joined')}>
      <ul className="passes" aria-live="polite">
        {view.says.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Section>
  );
};

const Build = ({ view: { build, isSettled } }: { readonly view: CutawayView }) => {
  const word = useWord();
  return (
    <p className="note section">
      {build}
      {isSettled ? null : `. ${word('app.cutaway.likeliest')}`}
    </p>
  );
};
