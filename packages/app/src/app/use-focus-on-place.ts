import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';

/** On a new place the focus goes to its heading, as soon as it is there; not on the first one. */
export const useFocusOnPlace = (): void => {
  const [address] = useLocation();
  const isFirst = useRef(true);
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return undefined;
    }
    // The part of a place is named by its address; without it there is nothing to wait for.
    if (address === '') return undefined;
    return whenHeadingIsThere((heading) => {
      heading.focus({ preventScroll: true });
      scrollTo(0, 0);
    });
  }, [address]);
};

const whenHeadingIsThere = (act: (heading: HTMLElement) => void): (() => void) => {
  let frame = 0;
  let left = 120;
  const before = document.querySelector('h1');
  const look = (): void => {
    const heading = document.querySelector('h1');
    left -= 1;
    if (heading !== null && (heading !== before || left < 110)) act(heading);
    else if (left > 0) frame = requestAnimationFrame(look);
  };
  frame = requestAnimationFrame(look);
  return () => cancelAnimationFrame(frame);
};
