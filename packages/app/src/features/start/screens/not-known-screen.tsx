import { useWord } from '../../../app/words/use-word.ts';
import { Button, Heading, Problem, Sheet } from '../../../ui/index.ts';

/** Before the device knows its workshop; the one place that needs the server. */
export const NotKnownScreen = ({ why }: { readonly why: 'no-answer' | 'not-allowed' }) => {
  const word = useWord();
  return (
    <Sheet title={{ name: 'Brinewright' }}>
      <Heading>{word('app.start.sign-in')}</Heading>
      <Problem
        what={word('app.start.sign-in')}
        why={word(`app.start.sign-in.${why}`)}
        mend={
          <Button kind="main" onPress={() => location.reload()}>
            {word('app.start.sign-in.again')}
          </Button>
        }
      />
    </Sheet>
  );
};
