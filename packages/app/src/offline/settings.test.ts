import { describe, expect, test } from 'vitest';
import { preferencesOf, readPreferences } from './settings.ts';

describe('preferences', () => {
  test.each([
    [['en-US', 'en'], 'en', 'us'],
    [['es-MX'], 'es', 'metric'],
    [['en-GB'], 'en', 'metric'],
    [[], 'en', 'us'],
  ] as const)('a device that speaks %j begins in %s and %s', (languages, language, system) => {
    expect(preferencesOf(languages)).toMatchObject({ language, system, theme: 'device' });
  });

  test('what was chosen is kept, and what is no longer a choice falls back by itself alone', () => {
    const usual = preferencesOf(['en-US']);
    const kept = { theme: 'dark', text: 'gigantic', gloves: 'on', language: 'es', system: 'metric' };
    expect(readPreferences(kept, usual)).toEqual({
      theme: 'dark',
      text: 'usual',
      gloves: 'on',
      language: 'es',
      system: 'metric',
    });
    expect(readPreferences('damaged', usual)).toEqual(usual);
  });
});
