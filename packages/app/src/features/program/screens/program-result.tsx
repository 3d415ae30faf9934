import { useWord } from '../../../app/words/use-word.ts';
import type { ProgramView } from '../../../engine/views/program-view.ts';
import { Drawing, Empty, Section, useWide } from '../../../ui/index.ts';
import { Gaps, Notes, Ways } from '../parts/behind.tsx';
import { Glance } from '../parts/glance.tsx';
import { KeyIn } from '../parts/key-in.tsx';
import { BackwashWindow } from '../parts/window.tsx';
import '../program.css';

/** A program without a visit around it: what to key in and what it comes to. */
export const ProgramResult = ({ view }: { readonly view: ProgramView }) => (
  <>
    <KeyIn view={view} />
    <Glance items={view.glance} />
    <Gaps view={view} />
  </>
);

/** Its drawings, and where its figures come from. */
export const ProgramPictures = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  const isWide = useWide();
  const { timeline, window } = view;
  if (timeline === undefined && window === undefined)
    return (
      <div className="no-picture">
        <Empty title={word('app.program.no-picture')} under={word('app.program.no-picture.under')} />
      </div>
    );
  return (
    <>
      {timeline === undefined ? null : (
        <Section title={word('app.program.regeneration')}>
          <Drawing {...(isWide ? timeline.wide : timeline.narrow)} />
        </Section>
      )}
      {window === undefined ? null : <BackwashWindow window={window} />}
    </>
  );
};

export const ProgramNotes = ({ view }: { readonly view: ProgramView }) => (
  <>
    <Notes view={view} />
    <Ways view={view} />
  </>
);
