import { useWord } from '../../../app/words/use-word.ts';
import type { ProgramView } from '../../../engine/views/program-view.ts';
import { SettingLine } from './setting-line.tsx';

/** What to key in, line by line as the controller asks for it. */
export const KeyIn = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  if (view.rows.length === 0) return null;
  const hasFound = view.rows.some(({ found }) => found !== undefined);
  return (
    <section className={hasFound ? 'section' : 'section no-found'} aria-label={word('app.program.key-in')}>
      <div className="setting-line head">
        <h2>{word('app.program.key-in')}</h2>
        <span className="note">{word('app.program.found')}</span>
        <span className="note">{word('app.program.set')}</span>
      </div>
      <ul className="settings">
        {view.rows.map((row) => (
          <SettingLine key={row.name} row={row} />
        ))}
      </ul>
      <p className="note">{word('app.program.tap-why')}</p>
    </section>
  );
};
