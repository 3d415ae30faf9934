import { Link } from 'wouter';
import { Icon } from './icon.tsx';
import { Mark } from './mark.tsx';
import type { SheetFrame } from './sheet-frame.ts';
import { WhereRecord } from './where-record.tsx';

export const TitleBlockBar = ({ frame }: { readonly frame: SheetFrame }) => {
  const { title, back, record } = frame;
  return (
    <header className="title-block">
      {back === undefined ? (
        <span className="title-mark">
          <Mark />
        </span>
      ) : (
        <Link className="title-back" href={back.to} aria-label={back.name}>
          <Icon name="back" />
        </Link>
      )}
      <div className="title-name">
        <b>{title.name}</b>
        <span>{title.under}</span>
      </div>
      <dl className="title-cells">
        {(title.cells ?? []).map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {record === undefined ? null : <WhereRecord {...record} />}
    </header>
  );
};
