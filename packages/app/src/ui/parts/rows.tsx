import type { ReactNode } from 'react';
import { Link } from 'wouter';

export const Rows = ({ children }: { readonly children: ReactNode }) => <ul className="rows">{children}</ul>;

export type RowProps = {
  readonly title: ReactNode;
  readonly under?: ReactNode;
  /** A line above the title, in two parts at most. */
  readonly over?: ReactNode;
  /** The value or time at the end of the line. */
  readonly at?: ReactNode;
  readonly drawing?: ReactNode;
  readonly heading?: boolean;
  /** What is in hand: lines of cut weight. */
  readonly now?: boolean;
  readonly to?: string | undefined;
  readonly onPress?: (() => void) | undefined;
};

export const Row = (props: RowProps) => {
  const { heading = false, now = false, to, onPress } = props;
  const className = ['row', heading ? 'heading' : '', now ? 'now' : '']
    .filter((name) => name !== '')
    .join(' ');
  const content = <RowContent {...props} />;
  if (to !== undefined)
    return (
      <li>
        <Link className={className} href={to}>
          {content}
        </Link>
      </li>
    );
  if (onPress !== undefined)
    return (
      <li>
        <button type="button" className={className} onClick={onPress}>
          {content}
        </button>
      </li>
    );
  return (
    <li>
      <div className={className}>{content}</div>
    </li>
  );
};

const RowContent = ({ title, under, over, at, drawing }: RowProps) => (
  <>
    {drawing === undefined ? null : <span className="row-drawing">{drawing}</span>}
    <span className="row-words">
      {over === undefined ? null : <span className="row-over">{over}</span>}
      <span className="row-title">{title}</span>
      {under === undefined ? null : <span className="row-under">{under}</span>}
    </span>
    {at === undefined ? null : <span className="row-at">{at}</span>}
  </>
);

/** Label over value, a few in a line: takes, open, with. */
export const Facts = (props: {
  readonly items: readonly { readonly label: string; readonly value: string }[];
}) => (
  <dl className="facts">
    {props.items.map(({ label, value }) => (
      <div key={label}>
        <dt>{label}</dt>
        <dd>{value}</dd>
      </div>
    ))}
  </dl>
);
