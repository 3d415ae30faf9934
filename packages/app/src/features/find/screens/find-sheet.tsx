import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { Drawing, Section, Sheet, useWide } from '../../../ui/index.ts';
import { FindActions } from '../parts/find-actions.tsx';
import { NextTest } from '../parts/next-test.tsx';
import { Gaps, OddsNow, Readings, TestList } from '../parts/stands.tsx';
import { Told } from '../parts/told.tsx';

type Props = StageProps<FindView>;

/** What was told, the test in hand, the odds, and the readings they stand on. */
export const FindSheet = (props: Props) => {
  const { view, isStale } = props;
  const busy = { className: isStale ? 'stale' : undefined, 'aria-busy': isStale };
  const first = (
    <div {...busy}>
      <Told view={view} />
      <NextTest {...props} />
    </div>
  );
  const odds = (
    <div {...busy}>
      <OddsNow view={view} />
    </div>
  );
  return (
    <Sheet
      wide={{
        doing: (
          <>
            {first}
            {view.picture === undefined ? null : <Readings {...props} />}
            <Gaps view={view} />
          </>
        ),
        picture: view.picture === undefined ? odds : <Cut view={view} />,
        why: (
          <>
            {view.picture === undefined ? <Readings {...props} /> : odds}
            <TestList {...props} />
          </>
        ),
      }}
      actions={<FindActions {...props} />}
    >
      {first}
      {odds}
      <Cut view={view} />
      <Readings {...props} />
      <TestList {...props} />
      <Gaps view={view} />
    </Sheet>
  );
};

/** The bore with the seal torn that the leading fault would need. */
const Cut = ({ view: { picture } }: { readonly view: FindView }) => {
  const isWide = useWide();
  if (picture === undefined) return null;
  return (
    <Section title={picture.title}>
      <Drawing {...(isWide ? picture.drawings.wide : picture.drawings.narrow)} />
      {picture.note === '' ? null : <p className="note">{picture.note}</p>}
    </Section>
  );
};
