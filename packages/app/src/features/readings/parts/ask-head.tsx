import { Heading } from '../../../ui/index.ts';
import type { ReadingScreenProps } from '../screens/reading-screen.tsx';

/** Lines of a definition are written without a point. */
const sentence = (line: string): string => (/[.!?]$/u.test(line) ? line : `${line}.`);

/** What is read, how, and what to mind while it is taken. */
export const AskHead = ({ ask, lines, cautions }: Pick<ReadingScreenProps, 'ask' | 'lines' | 'cautions'>) => (
  <>
    <Heading>{ask.title}</Heading>
    <p className="ask-how">{[...ask.how, ...lines].map(sentence).join(' ')}</p>
    {cautions.map(({ signal, title }) => (
      <p key={title} className="test-caution">
        <b>{signal}</b> {title}
      </p>
    ))}
  </>
);
