import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import 'virtual:look.css';
import { App } from './app/app.tsx';
import { openDevice } from './app/open-device.ts';
import { steadyAddress } from './app/steady-address.ts';
import { loadCatalogue, sayIn } from './app/words/say.ts';
import { keepShell } from './offline/service-worker/keep-shell.ts';
import './ui/css/index.css';

const start = async (place: HTMLElement): Promise<void> => {
  const address = steadyAddress();
  if (import.meta.env.DEV && location.pathname.endsWith('/gallery')) {
    const { showGallery } = await import('./app/gallery/show-gallery.tsx');
    return showGallery(place);
  }
  const opened = await openDevice(address);
  const { language } = opened.settings.preferences;
  const say = sayIn(language, await loadCatalogue(language));
  createRoot(place).render(
    <StrictMode>
      <App opened={opened} say={say} base={new URL(address).pathname.replace(/\/$/u, '')} />
    </StrictMode>,
  );
  if (import.meta.env.PROD) keepShell(address);
  return undefined;
};

const place = document.querySelector<HTMLElement>('#root');
if (place !== null) void start(place);
