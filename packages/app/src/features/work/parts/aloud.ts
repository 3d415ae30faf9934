/** Whether this device can read to somebody. */
export const canSpeak = (): boolean => typeof speechSynthesis !== 'undefined';

const voices = { en: 'en-US', es: 'es-MX' } as const;

/** Reads a step aloud; what was being read stops. */
export const readAloud = (words: string, language: 'en' | 'es'): void => {
  speechSynthesis.cancel();
  const said = new SpeechSynthesisUtterance(words);
  said.lang = voices[language];
  speechSynthesis.speak(said);
};
