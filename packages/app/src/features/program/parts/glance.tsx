import { useWord } from '../../../app/words/use-word.ts';
import type { GlanceView } from '../../../engine/views/program/glance.ts';
import { Figure } from '../../../ui/index.ts';

/** Four figures in ruled cells, each beside what it was. */
export const Glance = ({ items }: { readonly items: readonly GlanceView[] }) => {
  const word = useWord();
  if (items.length === 0) return null;
  return (
    <dl className="glance">
      {items.map(({ label, set, found }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>
            <Figure text={set.text} derivation={set.derivation} size="mid" />
            {found === undefined ? null : (
              <span className="was">{word('app.program.was', { value: found })}</span>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
};
