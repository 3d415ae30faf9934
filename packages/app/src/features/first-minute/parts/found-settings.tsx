import { useWord } from '../../../app/words/use-word.ts';
import type { FirstMinuteView, FoundSetting } from '../../../engine/views/first-minute-view.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Field, QuantityField, Section, Told } from '../../../ui/index.ts';
import { readSetting, type SettingTyped, settingsFound } from '../commands/found-settings.ts';
import type { PartProps } from '../part-props.ts';

type Typed = Readonly<Record<string, SettingTyped>>;
const empty: Typed = {};

/** How it is set, before anyone turns a knob. */
export const FoundSettings = ({ view, about, record }: PartProps) => {
  const word = useWord();
  const [typed, setTyped] = useDraft(`settings ${about.visit}`, empty);
  const read = Object.fromEntries(view.settings.map((one) => [one.id, readSetting(one, typed[one.id])]));
  const states = Object.values(read).map(({ state }) => state);
  const kept = view.settings.filter(({ recorded }) => recorded !== undefined).length;
  const keep = async (): Promise<void> => {
    await record(settingsFound(about, read));
    setTyped(empty);
  };
  return (
    <Section title={word('app.first.settings')}>
      <p className="note">{word('app.first.settings.under')}</p>
      {view.settings.map((setting) => (
        <OneSetting
          key={setting.id}
          setting={setting}
          view={view}
          typed={typed[setting.id]}
          onChange={(value) => setTyped({ ...typed, [setting.id]: value })}
        />
      ))}
      <div className="buttons">
        <Button onPress={() => void keep()} blocked={whyBlocked(states, word)}>
          {word('app.first.settings.keep')}
        </Button>
      </div>
      {kept === 0 ? null : <Told>{word('app.first.settings.kept', { count: kept })}</Told>}
    </Section>
  );
};

const whyBlocked = (states: readonly string[], word: ReturnType<typeof useWord>): string | undefined => {
  if (states.includes('wrong')) return word('app.first.settings.wrong');
  return states.includes('read') ? undefined : word('app.first.settings.none');
};

const OneSetting = (props: {
  readonly setting: FoundSetting;
  readonly view: FirstMinuteView;
  readonly typed: SettingTyped | undefined;
  readonly onChange: (typed: SettingTyped) => void;
}) => {
  const { setting, view, typed, onChange } = props;
  const word = useWord();
  const { label, kind, recorded } = setting;
  if (kind === 'clock' || kind === 'days')
    return (
      <div className="section-gap">
        <Field
          label={label}
          mode={kind === 'days' ? 'numeric' : 'text'}
          value={typed?.figure ?? ''}
          hint={
            recorded ?? word(kind === 'days' ? 'app.first.setting.days.hint' : 'app.first.setting.at.hint')
          }
          wrong={readSetting(setting, typed).state === 'wrong' ? word('app.first.settings.wrong') : undefined}
          onChange={(figure) => onChange({ figure, unit: '' })}
        />
      </div>
    );
  const units = kind === 'time' ? view.timeUnits : view.volumeUnits;
  return (
    <div className="section-gap">
      <QuantityField
        label={label}
        kind={kind}
        units={units}
        size="small"
        mayLack={false}
        hint={recorded}
        value={{ figure: typed?.figure ?? '', unit: typed?.unit ?? units[0] ?? '', known: 'value' }}
        onChange={({ figure, unit }) => onChange({ figure, unit })}
      />
    </div>
  );
};
