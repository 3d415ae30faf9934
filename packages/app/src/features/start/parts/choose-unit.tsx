import { useWord } from '../../../app/words/use-word.ts';
import { Answer, Answers, Button, Field, Section } from '../../../ui/index.ts';
import { undescribed } from '../undescribed.ts';
import type { ChooseProps } from './choose-site.tsx';
import { UnitMark } from './unit-mark.tsx';

/** A unit that is known, or a new one of which hardly anything need be known. */
export const ChooseUnit = (props: ChooseProps) => {
  const { draft, view, onChange } = props;
  const word = useWord();
  const toggle = (unit: string): void =>
    onChange({ ...draft, unit: draft.unit === unit ? '' : unit, isUnitNew: false });
  return (
    <>
      <p className="lead">
        {view.sites.find(({ stream }) => stream === draft.stream)?.name ?? draft.site}{' '}
        <Button
          kind="plain"
          onPress={() => onChange({ ...draft, isSiteChosen: false, stream: '', unit: '' })}
        >
          {word('app.new.site.change')}
        </Button>
      </p>
      {view.units.length === 0 ? null : (
        <div className="section-gap">
          <Answers name={word('app.new.unit')}>
            {view.units.map(({ id, name, family, kind }) => (
              <Answer
                key={id}
                title={name}
                under={family}
                drawing={<UnitMark kind={kind} />}
                chosen={draft.unit === id}
                onPress={() => toggle(id)}
              />
            ))}
            <Answer
              title={word('app.new.unit.new')}
              under={word('app.new.unit.new.under')}
              chosen={draft.isUnitNew}
              onPress={() => onChange({ ...draft, unit: '', isUnitNew: !draft.isUnitNew })}
            />
          </Answers>
        </div>
      )}
      {draft.isUnitNew || view.units.length === 0 ? <NewUnit {...props} /> : null}
    </>
  );
};

const NewUnit = ({ draft, view, onChange }: ChooseProps) => {
  const word = useWord();
  const kinds = ['softener', 'filter'] as const;
  const say = (some: Partial<typeof draft>): void =>
    onChange({ ...draft, unit: '', isUnitNew: true, ...some });
  const families = view.families.filter(({ kinds: of }) =>
    of.some((kind) => draft.kind === '' || kind === draft.kind),
  );
  return (
    <>
      <Section title={word('app.new.kind')}>
        <Answers name={word('app.new.kind')}>
          {kinds.map((kind) => (
            <Answer
              key={kind}
              title={word(`app.start.${kind}`)}
              drawing={<UnitMark kind={kind} />}
              chosen={draft.kind === kind}
              onPress={() =>
                say({
                  kind: draft.kind === kind ? '' : kind,
                  family: draft.family === '' ? undescribed : draft.family,
                })
              }
            />
          ))}
        </Answers>
      </Section>
      <Section title={word('app.new.family')}>
        <Answers name={word('app.new.family')}>
          <Answer
            title={word('app.new.undescribed')}
            under={word('app.new.undescribed.under')}
            chosen={draft.family === undescribed}
            onPress={() => say({ family: undescribed })}
          />
          {families.map(({ id, title }) => (
            <Answer
              key={id}
              title={title}
              chosen={draft.family === id}
              onPress={() => say({ family: draft.family === id ? undescribed : id })}
            />
          ))}
        </Answers>
      </Section>
      <Section title={word('app.new.name')}>
        <Field label={word('app.new.name.hint')} value={draft.name} onChange={(name) => say({ name })} />
      </Section>
    </>
  );
};
