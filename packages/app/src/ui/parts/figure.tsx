export type DerivationView = {
  readonly title: string;
  /** The formula in words. */
  readonly formula?: string | undefined;
  readonly inputs: readonly { readonly label: string; readonly value: string }[];
  readonly result?: { readonly label: string; readonly value: string } | undefined;
  /** Source, or 'common practice'. */
  readonly source?: string | undefined;
  readonly notes?: readonly string[] | undefined;
};

export type FigureProps = {
  readonly text: string;
  readonly derivation?: DerivationView | undefined;
  readonly size?: 'text' | 'mid' | 'fig' | 'arm';
};

/** A figure; one with a derivation has a dotted line and opens in place. Not for inside a paragraph. */
export const Figure = ({ text, derivation, size = 'text' }: FigureProps) => {
  const figure = <Amount text={text} size={size} />;
  if (derivation === undefined) return figure;
  return (
    <details className="derived">
      <summary>{figure}</summary>
      <Derivation of={derivation} />
    </details>
  );
};

/** The engine joins figure and unit by spaces that do not break; the unit stands lighter. */
const Amount = ({ text, size }: Pick<Required<FigureProps>, 'text' | 'size'>) => {
  const [figure = '', ...unit] = text.split('\u00a0');
  return (
    <span className="nowrap">
      <span className={`figure ${size}`}>{figure}</span>
      {unit.length === 0 ? null : <span className="unit">{`\u00a0${unit.join('\u00a0')}`}</span>}
    </span>
  );
};

/** Formula in words, inputs with units, result, source; the panel that a figure opens to. */
export const Derivation = ({ of }: { readonly of: DerivationView }) => (
  <div className="derivation">
    <div className="head-line">
      <b>{of.title}</b>
      {of.source === undefined ? null : <span className="note">{of.source}</span>}
    </div>
    {of.formula === undefined ? null : <p className="formula">{of.formula}</p>}
    <dl>
      {of.inputs.map(({ label, value }) => (
        <Pair key={label} label={label} value={value} />
      ))}
      {of.result === undefined ? null : <Pair {...of.result} className="result" />}
    </dl>
    {(of.notes ?? []).map((note) => (
      <p key={note} className="note">
        {note}
      </p>
    ))}
  </div>
);

const Pair = (props: { readonly label: string; readonly value: string; readonly className?: string }) => (
  <>
    <dt className={props.className}>{props.label}</dt>
    <dd className={props.className}>{props.value}</dd>
  </>
);
