import type { serverOn } from '@brinewright/server/testing';

type Server = Awaited<ReturnType<typeof serverOn>>;

export type Answer = { readonly status: number; readonly type: string; readonly body: Buffer };

/** A request of one step of the scenario, so that it can be made again exactly as it was. */
export type Request = {
  readonly method: 'GET' | 'POST' | 'PUT';
  readonly url: string;
  readonly payload?: string | Buffer;
  readonly type?: string;
};

export const ask = async (server: Server, { method, url, payload, type }: Request): Promise<Answer> => {
  const answer = await server.inject({
    method,
    url,
    headers: { host: 'localhost', ...(type === undefined ? {} : { 'content-type': type }) },
    ...(payload === undefined ? {} : { payload }),
  });
  return {
    status: answer.statusCode,
    type: String(answer.headers['content-type'] ?? ''),
    body: answer.rawPayload,
  };
};

export const jsonIn = ({ body }: Answer): unknown => JSON.parse(body.toString('utf8'));

/** A failure told as such: problem details with a title and a sentence on what became of the request. */
export const isClearError = (answer: Answer): boolean => {
  if (answer.status < 500 || !answer.type.startsWith('application/problem+json')) return false;
  const problem = jsonIn(answer);
  return (
    typeof problem === 'object' && problem !== null && hasText(problem, 'title') && hasText(problem, 'detail')
  );
};

const hasText = (record: object, key: string): boolean => {
  const found: unknown = Reflect.get(record, key);
  return typeof found === 'string' && found !== '';
};
