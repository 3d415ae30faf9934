import type { Answer, QuestionOf, ToWorker, ViewKind, Views } from './protocol.ts';
import type { ReaderChoice } from './speech.ts';

export type AnswerTo<K extends ViewKind> = Answer<Views[K]['view']>;

/** The main thread's end: asks by number, hears only what was not dropped. */
export class EngineClient {
  readonly #worker: Worker;
  readonly #listeners = new Map<number, (event: MessageEvent) => void>();
  #number = 0;

  constructor(worker: Worker, database: string, company: string) {
    this.#worker = worker;
    worker.addEventListener('message', (event) => this.#listeners.get(event.data.number)?.(event));
    this.#post({ type: 'open', database, company });
  }

  /** Gives the way to stop listening. */
  ask<K extends ViewKind>(
    kind: K,
    input: Views[K]['input'],
    reader: ReaderChoice,
    listener: (answer: AnswerTo<K>) => void,
  ): () => void {
    this.#number += 1;
    const number = this.#number;
    this.#listeners.set(number, ({ data }) => listener(data));
    const question: QuestionOf<K> = { number, kind, input, reader };
    this.#worker.postMessage({ type: 'ask', question });
    return () => {
      this.#listeners.delete(number);
      this.#post({ type: 'drop', number });
    };
  }

  #post(message: ToWorker): void {
    this.#worker.postMessage(message);
  }
}
