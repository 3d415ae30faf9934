import type { UnitSystem } from '@brinewright/units';
import {
  formatMessage,
  type Language,
  type MessageKey,
  type MessageValue,
  message,
  type Reader,
} from '@brinewright/words';
import type { FastifyRequest } from 'fastify';

export const languageCookie = 'bw-lang';
export const systemCookie = 'bw-system';

const languages: readonly Language[] = ['en', 'es'];
const systems: readonly UnitSystem[] = ['us', 'metric'];

/** The reader by address, else by what was chosen before, else by what the browser says. */
export const readerOf = (request: FastifyRequest, usual: Language): Reader => ({
  language:
    askedLanguage(request) ?? chosen(request, languageCookie, languages) ?? accepted(request) ?? usual,
  system: askedSystem(request) ?? chosen(request, systemCookie, systems) ?? 'us',
});

export const askedLanguage = (request: FastifyRequest): Language | undefined =>
  asked(request, 'lang', languages);
export const askedSystem = (request: FastifyRequest): UnitSystem | undefined =>
  asked(request, 'system', systems);

const asked = <T extends string>(
  { url }: FastifyRequest,
  name: string,
  known: readonly T[],
): T | undefined => {
  const given = new URLSearchParams(url.split('?')[1] ?? '').get(name);
  return known.find((one) => one === given);
};

const chosen = <T extends string>(
  request: FastifyRequest,
  name: string,
  known: readonly T[],
): T | undefined => {
  const given = request.cookies?.[name];
  return known.find((one) => one === given);
};

/** By the order of preference, 'es-MX' counting as Spanish. */
const accepted = ({ headers }: FastifyRequest): Language | undefined => {
  const ranked = (headers['accept-language'] ?? '')
    .slice(0, 500)
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.trim().toLowerCase().split(';');
      const quality = parameters.find((one) => one.trim().startsWith('q='))?.split('=')[1];
      return { tag, quality: quality === undefined ? 1 : Number(quality) };
    })
    .filter(({ quality }) => quality > 0)
    .toSorted((a, b) => b.quality - a.quality);
  for (const { tag } of ranked) {
    const known = languages.find((one) => tag === one || tag.startsWith(`${one}-`));
    if (known !== undefined) return known;
  }
  return undefined;
};

export const wordOf = (
  reader: Reader,
  key: MessageKey,
  values?: Readonly<Record<string, MessageValue>>,
): string => formatMessage(message(key, values), reader);
