import type { AppDatabase } from './database.ts';

/** Who works here, for which workshop; asked once and kept, so that no network is needed later. */
export type Session = {
  readonly company: string;
  readonly author: string;
  readonly device?: string | undefined;
  readonly isOwner: boolean;
};

export type SessionAnswer =
  | { readonly state: 'known'; readonly session: Session }
  /** This device was never let in. */
  | { readonly state: 'unknown'; readonly why: 'no-answer' | 'not-allowed' };

/** The session as last known; the server is asked for it anew without waiting where one is known. */
export const sessionOf = async (database: AppDatabase, api: string): Promise<SessionAnswer> => {
  const kept = readSession((await database.settings.get('session'))?.value);
  const asked = askSession(api).then(async (answer) => {
    if (answer.state === 'known') await database.settings.put({ key: 'session', value: answer.session });
    return answer;
  });
  return kept === undefined ? asked : { state: 'known', session: kept };
};

const askSession = async (api: string): Promise<SessionAnswer> => {
  try {
    const answer = await fetch(`${api}/session`, { headers: { accept: 'application/json' } });
    const session = answer.ok ? readSession(await answer.json()) : undefined;
    if (session !== undefined) return { state: 'known', session };
    return {
      state: 'unknown',
      why: answer.status === 401 || answer.status === 403 ? 'not-allowed' : 'no-answer',
    };
  } catch {
    return { state: 'unknown', why: 'no-answer' };
  }
};

const readSession = (value: unknown): Session | undefined => {
  if (typeof value !== 'object' || value === null) return undefined;
  const { company, author, device, isOwner }: Readonly<Record<string, unknown>> = { ...value };
  if (typeof company !== 'string' || !isUuid.test(company) || typeof author !== 'string') return undefined;
  return { company, author, isOwner: isOwner === true, ...(typeof device === 'string' ? { device } : {}) };
};

const isUuid = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/u;
