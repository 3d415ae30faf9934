import type { TellView } from '../../../engine/views/recognise-tell.ts';
import type { AnsweredTell, RecogniseView } from '../../../engine/views/recognise-view.ts';

export type InHand = {
  readonly question: TellView | undefined;
  /** Where it was answered before. */
  readonly answered: AnsweredTell | undefined;
};

/** The tell that the address names, else the one worth most for a minute while any is worth it. */
export const inHand = (view: RecogniseView, part: string | undefined): InHand => {
  const answered = view.answered.find(({ question }) => question.id === part);
  const asked = [...view.questions, ...view.others].find(({ id }) => id === part);
  const best = view.state === 'asking' ? view.questions[0] : undefined;
  return { question: answered?.question ?? asked ?? best, answered };
};
