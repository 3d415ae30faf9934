import type { ReactNode } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { WorkView } from '../../../engine/views/work/work-types.ts';
import { Button, Heading, Note, Sheet } from '../../../ui/index.ts';
import { Remarks } from '../parts/remarks.tsx';

/** The whole plan is done; what was set and proved comes next. */
export const AllDone = ({ view, nav, list }: StageProps<WorkView> & { readonly list: ReactNode }) => {
  const word = useWord();
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{word('app.work.all-done')}</Heading>
            <Note>{word('app.work.all-done.says', { count: view.steps.length })}</Note>
            <Remarks view={view} />
          </>
        ),
        picture: list,
      }}
      actions={
        <>
          <Button onPress={() => nav.toStage('program')}>{word('app.work.to-program')}</Button>
          <Button kind="main" onPress={() => nav.toStage('prove')}>
            {word('app.work.to-prove')}
          </Button>
        </>
      }
    />
  );
};
