import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { loadCatalogue, sayIn } from '../words/say.ts';
import { WordsContext } from '../words/use-word.ts';
import './gallery.css';
import { Gallery } from './gallery.tsx';

/** `?theme=dark&language=es` choose what it is looked at in. */
export const showGallery = async (place: HTMLElement): Promise<void> => {
  const asked = new URLSearchParams(location.search);
  const language = asked.get('language') === 'es' ? 'es' : 'en';
  document.documentElement.setAttribute('data-theme', asked.get('theme') ?? 'light');
  const say = sayIn(language, await loadCatalogue(language));
  createRoot(place).render(
    <StrictMode>
      <WordsContext value={say}>
        <Gallery />
      </WordsContext>
    </StrictMode>,
  );
};
