import type { Speech } from '../speech.ts';

const locales = { en: 'en-GB', es: 'es-MX' } as const;

/** 'Wednesday 25 November'. */
export const longDay = ({ reader }: Speech, now: string): string => {
  const parts = { weekday: 'long', day: 'numeric', month: 'long' } as const;
  const text = new Intl.DateTimeFormat(locales[reader.language], parts).format(new Date(now));
  return text.slice(0, 1).toUpperCase() + text.slice(1).replace(',', '');
};

/** '8:34' by the clock of this device. */
export const clockTime = (instant: string): string =>
  new Intl.DateTimeFormat('en-GB', { hour: 'numeric', minute: '2-digit' })
    .format(new Date(instant))
    .replace(/^0/u, '');

/** The day of an instant here, '2026-11-25'. */
export const dayHere = (instant: string): string => {
  const at = new Date(instant);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};
