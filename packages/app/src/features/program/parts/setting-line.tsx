import { useWord } from '../../../app/words/use-word.ts';
import type { SettingRow } from '../../../engine/views/program/settings.ts';
import { Derivation, Figure } from '../../../ui/index.ts';

/** One setting: found, set, and behind it the exact time, both neighbours, and where it comes from. */
export const SettingLine = ({ row }: { readonly row: SettingRow }) => {
  const line = <LineCells row={row} />;
  const of = row.isChanged ? 'setting changed' : 'setting';
  const way = row.exact?.derivation ?? row.set?.derivation;
  return (
    <li className={of}>
      {way === undefined && row.neighbours.length === 0 ? (
        <div className="setting-line">{line}</div>
      ) : (
        <details className="setting-why">
          <summary className="setting-line">{line}</summary>
          <Behind row={row} />
        </details>
      )}
      <Otherwise row={row} />
    </li>
  );
};

const LineCells = ({ row }: { readonly row: SettingRow }) => {
  const word = useWord();
  return (
    <>
      <span className="setting-mark" aria-hidden="true" />
      <span className="setting-name">
        {row.label}
        {row.isChanged ? <span className="only-heard">, {word('app.program.changed')}</span> : null}
      </span>
      <span className="setting-found">
        <span className="only-heard">{word('app.program.found')} </span>
        {row.found === undefined ? (
          word('app.program.none')
        ) : (
          <Found text={row.found.text} beside={row.set?.text} />
        )}
      </span>
      <span className="setting-set">
        <span className="only-heard">{word('app.program.set')} </span>
        {row.set === undefined ? word('app.program.none') : <Figure text={row.set.text} size="mid" />}
      </span>
    </>
  );
};

/** Found in second ink; its unit is only said where it is another than that of the set value. */
const Found = ({ text, beside }: { readonly text: string; readonly beside: string | undefined }) => {
  const [figure = '', ...unit] = text.split('\u00a0');
  const own = unit.join('\u00a0');
  const isSame = own === '' || own === beside?.split('\u00a0').slice(1).join('\u00a0');
  return (
    <>
      {figure}
      {isSame ? <span className="only-heard"> {own}</span> : <small>{`\u00a0${own}`}</small>}
    </>
  );
};

const Behind = ({ row }: { readonly row: SettingRow }) => {
  const word = useWord();
  const way = row.exact?.derivation ?? row.set?.derivation;
  return (
    <div className="setting-behind">
      {row.neighbours.length === 0 ? null : (
        <ul className="neighbours">
          {row.neighbours.map(({ time, does, isSet }) => (
            <li key={time} className={isSet ? 'is-set' : undefined}>
              <b>{time}</b>
              <span>
                {does}
                {isSet ? ` (${word('app.program.is-set')})` : ''}
              </span>
            </li>
          ))}
        </ul>
      )}
      {row.under === undefined ? null : <p className="note">{row.under}</p>}
      {way === undefined ? null : <Derivation of={way} />}
    </div>
  );
};

const Otherwise = ({ row }: { readonly row: SettingRow }) => {
  const word = useWord();
  return row.otherwise === undefined ? null : (
    <p className="setting-otherwise">{word('app.program.otherwise', { value: row.otherwise })}</p>
  );
};
