export type VerdictProps = { readonly verdict: 'pass' | 'fail' | 'not-decided'; readonly word: string };

/** A sign and always the word. */
export const Verdict = ({ verdict, word }: VerdictProps) => (
  <span className={`verdict ${verdict}`}>
    <svg viewBox="0 0 26 26" aria-hidden="true">
      {signs[verdict]}
    </svg>
    {word}
  </span>
);

const signs = {
  pass: (
    <>
      <path className="filled" d="M1 1h24v24H1z" />
      <path className="sign" d="M6 13.5l5 5L20 7.5" />
    </>
  ),
  fail: (
    <>
      <path className="frame" d="M2 2h22v22H2z" />
      <path className="cross" d="M7 7l12 12M19 7L7 19" />
    </>
  ),
  'not-decided': (
    <>
      <path className="filled" d="M2 24V2h22z" />
      <path className="frame dashed" d="M2 2h22v22H2z" />
    </>
  ),
} as const;
