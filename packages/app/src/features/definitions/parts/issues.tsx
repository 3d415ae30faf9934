import type { IssueView } from '../../../engine/views/definitions/issue-view.ts';

/** Where, how grave, why, and how to mend it. */
export const Issues = ({ issues }: { readonly issues: readonly IssueView[] }) =>
  issues.length === 0 ? null : (
    <ul className="issues">
      {issues.map(({ key, severity, word, place, says, mend }) => (
        <li key={key} className={severity}>
          <p className="note">
            <b>{word}</b> {place}
          </p>
          <p>{says}</p>
          {mend === undefined ? null : <p className="note">{mend}</p>}
        </li>
      ))}
    </ul>
  );
