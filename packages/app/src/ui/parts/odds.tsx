import { useId } from 'react';
import { useWord } from '../../app/words/use-word.ts';
import { Hatch } from './progress.tsx';

export type OddsRow = {
  readonly title: string;
  /** 0 to 1. */
  readonly p: number;
  /** As shown: '46 %'. */
  readonly percent: string;
  /** Where it stood before the last reading, 0 to 1. */
  readonly before?: number | undefined;
  readonly for?: string | undefined;
  readonly against?: string | undefined;
  /** 'None of these' is dashed. */
  readonly isNone?: boolean;
};

export const Odds = ({ rows }: { readonly rows: readonly OddsRow[] }) => {
  const lead = Math.max(...rows.filter((row) => row.isNone !== true).map(({ p }) => p));
  const leader = rows.find((row) => row.isNone !== true && row.p === lead);
  return (
    <ol className="odds">
      {rows.map((row) => (
        <li key={row.title} className={classOf(row, row === leader)}>
          <div className="odds-line">
            <span>{row.title}</span>
            <b className="percent">{row.percent}</b>
          </div>
          <Bar row={row} isLead={row === leader} />
          <Why row={row} />
        </li>
      ))}
    </ol>
  );
};

const classOf = ({ isNone }: OddsRow, isLead: boolean): string | undefined => {
  if (isNone === true) return 'odds-none';
  return isLead ? 'odds-lead' : undefined;
};

const percentOf = (share: number): string => `${Math.round(Math.min(1, Math.max(0, share)) * 1000) / 10}%`;

/** Drawn on a quarter scale; a picture of the figure beside it, so it is not read out again. */
const Bar = ({ row, isLead }: { readonly row: OddsRow; readonly isLead: boolean }) => {
  const id = useId();
  const width = percentOf(row.p);
  const isHatched = !isLead && row.isNone !== true;
  return (
    <svg className="odds-bar" aria-hidden="true">
      <defs>
        <Hatch id={id} />
      </defs>
      <line className="odds-scale" x1="0" x2="100%" y1="19" y2="19" />
      {['25%', '50%', '75%', '100%'].map((x) => (
        <line key={x} className="odds-scale" x1={x} x2={x} y1="14" y2="19" />
      ))}
      <rect className="odds-now" y="5" width={width} height="14" />
      {isHatched ? <rect y="5" width={width} height="14" fill={`url(#${id})`} /> : null}
      {row.before === undefined ? null : (
        <svg x={percentOf(row.before)} overflow="visible" aria-hidden="true">
          <path className="odds-before" d="M-4 0h8l-3 4v17h-2v-17z" />
        </svg>
      )}
    </svg>
  );
};

const Why = ({ row }: { readonly row: OddsRow }) => {
  const word = useWord();
  const parts = [
    row.for === undefined ? undefined : word('app.ui.odds.for', { what: row.for }),
    row.against === undefined ? undefined : word('app.ui.odds.against', { what: row.against }),
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? null : <p className="odds-why">{parts.join(' ')}</p>;
};
