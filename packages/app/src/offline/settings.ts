import type { Language } from '@brinewright/words';
import type { AppDatabase } from './database.ts';

/** The app's own preferences; nothing of the journal hangs on them. */
export type Preferences = {
  readonly theme: 'device' | 'light' | 'dark' | 'contrast';
  readonly text: 'usual' | 'large' | 'largest';
  readonly gloves: 'on' | 'off';
  readonly language: Language;
  readonly system: 'us' | 'metric';
};

/** What the device itself says, until something else is chosen. */
export const preferencesOf = (languages: readonly string[]): Preferences => {
  const [first = 'en'] = languages;
  return {
    theme: 'device',
    text: 'usual',
    gloves: 'off',
    language: first.startsWith('es') ? 'es' : 'en',
    system: /^en(?:-US)?$/u.test(first) ? 'us' : 'metric',
  };
};

const choices: { readonly [K in keyof Preferences]: readonly Preferences[K][] } = {
  theme: ['device', 'light', 'dark', 'contrast'],
  text: ['usual', 'large', 'largest'],
  gloves: ['on', 'off'],
  language: ['en', 'es'],
  system: ['us', 'metric'],
};

export class Settings {
  readonly #database: AppDatabase;
  readonly #listeners = new Set<() => void>();
  #preferences: Preferences;

  private constructor(database: AppDatabase, preferences: Preferences) {
    this.#database = database;
    this.#preferences = preferences;
  }

  static async open(database: AppDatabase, languages: readonly string[]): Promise<Settings> {
    const row = await database.settings.get('preferences');
    return new Settings(database, readPreferences(row?.value, preferencesOf(languages)));
  }

  get preferences(): Preferences {
    return this.#preferences;
  }

  async choose(some: Partial<Preferences>): Promise<void> {
    this.#preferences = { ...this.#preferences, ...some };
    for (const listener of this.#listeners) listener();
    await this.#database.settings.put({ key: 'preferences', value: this.#preferences });
  }

  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}

/** Each choice that is still one of the choices; the rest as the device says. */
export const readPreferences = (value: unknown, usual: Preferences): Preferences => {
  const kept: Readonly<Record<string, unknown>> =
    typeof value === 'object' && value !== null ? { ...value } : {};
  const one = <K extends keyof Preferences>(key: K): Preferences[K] =>
    choices[key].find((choice) => choice === kept[key]) ?? usual[key];
  return {
    theme: one('theme'),
    text: one('text'),
    gloves: one('gloves'),
    language: one('language'),
    system: one('system'),
  };
};
