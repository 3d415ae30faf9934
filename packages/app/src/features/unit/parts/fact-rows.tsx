import { useWord } from '../../../app/words/use-word.ts';
import type { FactView } from '../../../engine/views/unit/fact.ts';
import type { FactGroup } from '../../../engine/views/unit/unit-facts.ts';
import { Row, Rows, Section } from '../../../ui/index.ts';

export type FactGroupsProps = {
  readonly groups: readonly FactGroup[];
  readonly onEdit: (key: string) => void;
};

/** Each value with how it is known; a tap says it anew. */
export const FactGroups = ({ groups, onEdit }: FactGroupsProps) => (
  <>
    {groups.map(({ id, title, facts }) => (
      <Section key={id} title={title}>
        <Rows>
          {facts.map((fact) => (
            <FactRow key={fact.key} fact={fact} onEdit={onEdit} />
          ))}
        </Rows>
      </Section>
    ))}
  </>
);

const FactRow = ({ fact, onEdit }: { readonly fact: FactView; readonly onEdit: (key: string) => void }) => {
  const word = useWord();
  const { key, label, value, how, u, meanwhile } = fact;
  const under = [how?.word, u, meanwhile?.from].filter((text) => text !== undefined).join(', ');
  return (
    <Row
      title={label}
      under={under === '' ? undefined : under}
      at={value ?? <ToAdd meanwhile={meanwhile?.value} add={word('app.unit.add')} />}
      onPress={() => onEdit(key)}
    />
  );
};

/** Nobody has said it: what is reckoned with meanwhile stands in second ink. */
const ToAdd = ({ meanwhile, add }: { readonly meanwhile: string | undefined; readonly add: string }) => (
  <>
    {meanwhile === undefined ? null : <span className="meanwhile">{meanwhile}</span>}
    <span className="to-add">{add}</span>
  </>
);
