import { type ReactNode, useContext } from 'react';
import { useWord } from '../../app/words/use-word.ts';
import { SheetContext, type SheetFrame } from './sheet-frame.ts';
import { StageStrip } from './stage-strip.tsx';
import { TitleBlockBar } from './title-block-bar.tsx';
import { useWide } from './use-wide.ts';

type Columns = { readonly doing: ReactNode; readonly picture?: ReactNode; readonly why?: ReactNode };

export type SheetProps = Partial<SheetFrame> & {
  /** The columns from 1000 px on; without it the body stands in one column. */
  readonly wide?: Columns | undefined;
  /** The body on a phone; where there is none, the columns stand one below the other. */
  readonly children?: ReactNode;
  readonly actions?: ReactNode;
};

/** A whole screen: title block, stage strip, body, actions at the thumb. */
export const Sheet = ({ wide, children, actions, ...own }: SheetProps) => {
  const frame = { ...useContext(SheetContext), ...own };
  const isWide = useWide();
  const columns = wide !== undefined && (isWide || children === undefined) ? wide : { doing: children };
  const bar = actions === undefined ? null : <div className="actions">{actions}</div>;
  return (
    <div className="sheet">
      <TitleBlockBar frame={frame} />
      {frame.stages === undefined ? null : <StageStrip stages={frame.stages} />}
      <Body columns={columns} bar={isWide ? bar : null} />
      {isWide ? null : bar}
    </div>
  );
};

const shapeOf = ({ picture, why }: Columns): string => {
  if (picture === undefined && why === undefined) return 'one';
  return picture === undefined || why === undefined ? 'two' : 'three';
};

const Body = ({ columns, bar }: { readonly columns: Columns; readonly bar: ReactNode }) => {
  const word = useWord();
  const { doing, picture, why } = columns;
  return (
    <main className={`sheet-body ${shapeOf(columns)}`}>
      <div className="column doing">
        {doing}
        {bar === null ? null : <div className="actions-gap" />}
        {bar}
      </div>
      {picture === undefined ? null : <Side name={word('app.ui.picture')}>{picture}</Side>}
      {why === undefined ? null : <Side name={word('app.ui.why')}>{why}</Side>}
    </main>
  );
};

/** Scrolls by itself on the wide sheet, so it must be in reach of the keys. */
const Side = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls needs the keys
  <section className="column" aria-label={name} tabIndex={0}>
    {children}
  </section>
);
