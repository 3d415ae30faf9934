import { Link } from 'wouter';
import { useWord } from '../../app/words/use-word.ts';
import type { RecordPlace } from './sheet-frame.ts';

/** Two ends of a way, this device and the office, and the word for how far the record is. */
export const WhereRecord = ({ state, counts, to }: RecordPlace) => {
  const word = useWord();
  const said = {
    device: word('app.ui.record.device'),
    sent: word('app.ui.record.sent'),
    refused: word('app.ui.record.refused', { count: counts.refused }),
  }[state];
  const content = (
    <>
      <Way state={state} />
      <b>{said}</b>
    </>
  );
  const className = `where ${state}`;
  return to === undefined ? (
    <div className={className}>{content}</div>
  ) : (
    <Link className={className} href={to}>
      {content}
    </Link>
  );
};

const Way = ({ state }: { readonly state: RecordPlace['state'] }) => (
  <svg viewBox="0 0 74 12" aria-hidden="true">
    <path className="where-end there" d="M1 1h10v10H1z" />
    <path className={state === 'device' ? 'where-way waiting' : 'where-way'} d="M12 6h50" />
    <path className={state === 'sent' ? 'where-end there' : 'where-end'} d="M63 1h10v10H63z" />
    {state === 'refused' ? <path className="where-way" d="M64 2l8 8M72 2l-8 8" /> : null}
  </svg>
);
