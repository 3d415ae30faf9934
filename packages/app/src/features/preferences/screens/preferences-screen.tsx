import { useWord } from '../../../app/words/use-word.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { usePreferences } from '../../../offline/reader.ts';
import type { Preferences } from '../../../offline/settings.ts';
import { Choice, Heading, Sheet } from '../../../ui/index.ts';
import { BundlePart } from '../parts/bundle-part.tsx';
import { StoragePart } from '../parts/storage-part.tsx';

/** How the app looks and speaks on this device; storage, and everything in one file. */
export const PreferencesScreen = () => {
  const word = useWord();
  return (
    <Sheet
      back={{ to: '/', name: word('app.record.back') }}
      wide={{ doing: <Choices />, picture: <Kept /> }}
    />
  );
};

const Choices = () => {
  const word = useWord();
  const { settings } = useDevice();
  const preferences = usePreferences();
  const choice = <K extends keyof Preferences>(
    key: K,
    values: readonly Preferences[K][],
    label: (value: Preferences[K]) => string,
  ) => ({
    label: word(`app.preferences.${key}`),
    value: preferences[key],
    options: values.map((value) => ({ value, label: label(value) })),
    onChange: (value: Preferences[K]) => void settings.choose({ [key]: value }),
  });
  return (
    <>
      <Heading>{word('app.preferences.title')}</Heading>
      <div className="section-gap">
        <Choice
          {...choice('theme', ['device', 'light', 'dark', 'contrast'], (value) =>
            word(`app.preferences.theme.${value}`),
          )}
        />
        <Choice
          {...choice('text', ['usual', 'large', 'largest'], (value) => word(`app.preferences.text.${value}`))}
        />
        <Choice {...choice('gloves', ['off', 'on'], (value) => word(`app.preferences.gloves.${value}`))} />
        <Choice {...choice('language', ['en', 'es'], (value) => word(`app.preferences.language.${value}`))} />
        <Choice {...choice('system', ['us', 'metric'], (value) => word(`app.preferences.system.${value}`))} />
      </div>
    </>
  );
};

const Kept = () => (
  <>
    <StoragePart />
    <BundlePart />
  </>
);
