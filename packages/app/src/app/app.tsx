import { Suspense, useEffect, useState } from 'react';
import { Router, useLocation } from 'wouter';
import { NotKnownScreen } from '../features/start/screens/not-known-screen.tsx';
import { DeviceContext } from '../offline/device-context.ts';
import type { Preferences } from '../offline/settings.ts';
import { useSettings } from '../offline/use-settings.ts';
import type { Opened } from './open-device.ts';
import { PlaceFault } from './place-fault.tsx';
import { RecordFrame } from './record-frame.tsx';
import { Routes } from './routes.tsx';
import { loadCatalogue, type Say, sayIn } from './words/say.ts';
import { WordsContext } from './words/use-word.ts';

export type AppProps = { readonly opened: Opened; readonly say: Say; readonly base: string };

/** Everything around the places: words, looks, addresses, and the device under them. */
export const App = ({ opened, say: first, base }: AppProps) => {
  const preferences = useSettings(opened.settings);
  const say = useSay(preferences, first);
  useLooks(preferences);
  return (
    <WordsContext value={say}>
      {opened.device === undefined ? (
        <NotKnownScreen why={opened.answer.state === 'unknown' ? opened.answer.why : 'no-answer'} />
      ) : (
        <DeviceContext value={opened.device}>
          <Router base={base}>
            <RecordFrame>
              <Places />
            </RecordFrame>
          </Router>
        </DeviceContext>
      )}
    </WordsContext>
  );
};

const Places = () => {
  const [address] = useLocation();
  return (
    <PlaceFault address={address}>
      <Suspense fallback={null}>
        <Routes />
      </Suspense>
    </PlaceFault>
  );
};

/** Another language comes with its catalogue; until then the words stay as they are. */
const useSay = ({ language }: Preferences, first: Say): Say => {
  const [say, setSay] = useState<Say>(() => first);
  useEffect(() => {
    let isWanted = true;
    void loadCatalogue(language).then((catalogue) => {
      if (isWanted) setSay(() => sayIn(language, catalogue));
    });
    return () => {
      isWanted = false;
    };
  }, [language]);
  return say;
};

const useLooks = ({ theme, text, gloves, language }: Preferences): void => {
  useEffect(() => {
    const root = document.documentElement;
    root.lang = language;
    root.setAttribute('data-text', text);
    root.setAttribute('data-gloves', gloves);
    if (theme === 'device') root.removeAttribute('data-theme');
    else root.setAttribute('data-theme', theme);
  }, [theme, text, gloves, language]);
};
