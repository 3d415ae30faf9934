import { nearest } from '@brinewright/equipment';
import { type Message, message } from '@brinewright/words';

/** The mend of a word nobody knows: the one that was probably meant, else what the caller has to say. */
export const didYouMean = (word: string, known: readonly string[], otherwise: Message): Message => {
  const near = nearest(word, known);
  return near === undefined ? otherwise : message('issue.did-you-mean', { near });
};
