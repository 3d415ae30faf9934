import { useRef } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { PaperView } from '../../../engine/views/paper-view.ts';
import { Button } from '../../../ui/index.ts';

/** The card from the papers: printed, or kept as a file that opens anywhere. */
export const CardActions = ({ card }: { readonly card: PaperView }) => {
  const word = useWord();
  const frame = useRef<HTMLIFrameElement>(null);
  const print = (): void => {
    const sheet = frame.current;
    if (sheet === null) return;
    sheet.onload = () => sheet.contentWindow?.print();
    sheet.srcdoc = card.html;
  };
  return (
    <>
      <Button onPress={() => saved(card)}>{word('app.leave-safe.save')}</Button>
      <Button kind="main" onPress={print}>
        {word('app.leave-safe.print')}
      </Button>
      <iframe
        ref={frame}
        className="print-frame"
        title={word('app.leave-safe.card')}
        aria-hidden="true"
        tabIndex={-1}
      />
    </>
  );
};

const saved = ({ html, name }: PaperView): void => {
  const address = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};
