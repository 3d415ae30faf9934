import { useWord } from '../../../app/words/use-word.ts';
import type { UnitChoicesView } from '../../../engine/views/unit-choices-view.ts';
import { Answer, Answers, Field } from '../../../ui/index.ts';
import type { NewVisitDraft } from '../new-visit-draft.ts';

export type ChooseProps = {
  readonly draft: NewVisitDraft;
  readonly view: UnitChoicesView;
  readonly onChange: (draft: NewVisitDraft) => void;
};

/** A place that is known, or a new one by its name. */
export const ChooseSite = ({ draft, view, onChange }: ChooseProps) => {
  const word = useWord();
  const typed = draft.site.trim();
  const known = view.sites.filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase())).slice(0, 8);
  const choose = (stream: string, site: string): void =>
    onChange({ ...draft, stream, site, isSiteChosen: true, isUnitNew: stream === '' });
  return (
    <>
      <div className="section-gap">
        <Field
          label={word('app.new.site.hint')}
          value={draft.site}
          onChange={(site) => onChange({ ...draft, site })}
        />
      </div>
      <div className="section-gap">
        <Answers name={word('app.new.site')}>
          {typed === '' ? null : (
            <Answer title={word('app.new.site.new', { name: typed })} onPress={() => choose('', typed)} />
          )}
          {known.map(({ stream, name, units }) => (
            <Answer
              key={stream}
              title={name}
              under={word('app.new.site.known', { units })}
              onPress={() => choose(stream, name)}
            />
          ))}
        </Answers>
      </div>
    </>
  );
};
