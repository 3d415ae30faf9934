import { useLayoutEffect, useRef, useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { Picture } from '../../../ui/index.ts';

type Sized = { readonly width: number; readonly svg: string };

/** The widest of several drawings that fits the place; its words keep the size of the text. */
export const Fitting = (props: { readonly drawings: readonly Sized[]; readonly twin: readonly string[] }) => {
  const word = useWord();
  const place = useRef<HTMLDivElement>(null);
  const room = useRoom(place);
  const chosen = widestIn(props.drawings, room);
  return (
    <figure className="drawing fitting">
      <div ref={place}>{chosen === undefined ? null : <Picture svg={chosen.svg} />}</div>
      <details className="twin">
        <summary>{word('app.ui.drawing.in-words')}</summary>
        {props.twin.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </details>
    </figure>
  );
};

export const widestIn = (drawings: readonly Sized[], room: number): Sized | undefined =>
  drawings.findLast(({ width }) => width <= room) ?? drawings[0];

/** Room in px of the usual text size: larger text leaves less of it. */
const useRoom = (place: React.RefObject<HTMLDivElement | null>): number => {
  const [room, setRoom] = useState(0);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const measure = (): void => {
      const text = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
      setRoom((element.clientWidth * 16) / text);
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [place]);
  return room;
};
