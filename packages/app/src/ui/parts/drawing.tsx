import { useLayoutEffect, useRef } from 'react';
import { useWord } from '../../app/words/use-word.ts';

export type DrawingView = {
  /** SVG text of the engine's own making. */
  readonly svg: string;
  /** What it shows, in sentences; the first is its finding. */
  readonly twin: readonly string[];
};

/** A drawing with its text twin. Read as XML and put in as nodes, so that nothing in it can run. */
export const Drawing = ({ svg, twin }: DrawingView) => {
  const word = useWord();
  return (
    <figure className="drawing">
      <Picture svg={svg} />
      {twin.length === 0 ? null : (
        <details className="twin">
          <summary>{word('app.ui.drawing.in-words')}</summary>
          {twin.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </details>
      )}
    </figure>
  );
};

/** A drawing whose words stand beside it, such as the one in an answer. */
export const Picture = ({ svg }: { readonly svg: string }) => {
  const place = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    const root = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    if (root.nodeName === 'svg') place.current?.replaceChildren(document.importNode(root, true));
  }, [svg]);
  return <span className="drawing-sheet" ref={place} />;
};
