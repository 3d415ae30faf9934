import { pullReply, pushReply, type Reply, readEntry } from '@brinewright/journal';
import type { Way } from './client.ts';

const patience = 15_000;

/** Pushing and pulling over HTTP, with nothing of the server's own code; `onStatus` hears of every answer. */
export const wayTo = (address: string, onStatus: (status: number) => void = () => undefined): Way => {
  const heard = async <T>(path: string, body: unknown, shape: Shape<T>): Promise<Reply<T>> => {
    const answer = await answerTo(`${address}${path}`, body);
    if (answer !== undefined) onStatus(answer.status);
    return replyIn(answer, shape);
  };
  return {
    push: (request) => heard('/own/api/sync/push', request, pushReply),
    pull: (request) => heard('/own/api/sync/pull', request, pullReply),
  };
};

type Shape<T> = { readonly parse: (value: unknown) => T };

const replyIn = <T>(answer: Answer | undefined, shape: Shape<T>): Reply<T> => {
  if (answer === undefined) return { state: 'no-answer' };
  if (answer.status === 200) return { state: 'answered', value: shape.parse(answer.body) };
  return { state: answer.status === 401 || answer.status === 403 ? 'not-allowed' : 'no-answer' };
};

export type Answer = { readonly status: number; readonly body: unknown };

/** Undefined where the connection did not last until the end of the answer. */
export const answerTo = async (url: string, body: unknown): Promise<Answer | undefined> => {
  try {
    const answer = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(patience),
    });
    return { status: answer.status, body: await answer.json() };
  } catch {
    return undefined;
  }
};

/** The company of the workshop at an address, which is begun there if nobody has: whose entries it holds. */
export const companyAt = async (address: string): Promise<string> => {
  const begun = await fetch(`${address}/own/begin`, {
    method: 'POST',
    body: new URLSearchParams({ author: 'trial', name: 'Trial' }),
    redirect: 'manual',
  });
  const first = await wayTo(address).pull({ follow: { all: 0 }, most: 1 });
  const [entry] = first.state === 'answered' ? first.value.entries : [];
  const read = entry === undefined ? undefined : readEntry(entry);
  if (read?.ok !== true) throw new Error(`no workshop at ${address}: begun with ${begun.status}`);
  return read.sealed.entry.company;
};
