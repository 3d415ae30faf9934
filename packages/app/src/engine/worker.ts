import { openDatabase } from '../offline/database.ts';
import { deviceSource } from '../offline/device-source.ts';
import { Engine } from './engine.ts';
import { paperFont } from './paper-font.ts';
import type { Answer, Question, ToWorker } from './protocol.ts';

/*
 * The worker that computes and speaks. Questions are answered one after the other, the newest first; between two
 * slices of work messages are let in, so that a question nobody waits for any more is dropped at once.
 */

const waiting = new Map<number, Question>();
let engine: Engine | undefined;
let isAtWork = false;

addEventListener('message', ({ data }: MessageEvent) => {
  const message: ToWorker = data;
  if (message.type === 'open')
    engine = new Engine(deviceSource(openDatabase(message.database), message.company), paperFont);
  if (message.type === 'ask') waiting.set(message.question.number, message.question);
  if (message.type === 'drop') waiting.delete(message.number);
  void work();
});

const work = async (): Promise<void> => {
  if (isAtWork || engine === undefined) return;
  isAtWork = true;
  for (;;) {
    const question = [...waiting.values()].at(-1);
    if (question === undefined) break;
    await answer(engine, question);
    waiting.delete(question.number);
  }
  isAtWork = false;
};

const answer = async (by: Engine, question: Question): Promise<void> => {
  const { number } = question;
  const ticks = { now: () => new Date().toISOString(), pause: () => pauseUnless(() => waiting.has(number)) };
  try {
    for await (const reply of by.answer(question, ticks)) tell({ number, ...reply });
  } catch (error) {
    tell({ number, state: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
};

const tell = (answer: Answer): void => postMessage(answer);

const pauseUnless = (isWanted: () => boolean): Promise<boolean> =>
  new Promise((resolve) => {
    setTimeout(() => resolve(isWanted()), 0);
  });
