import { useEffect } from 'react';

/** Control and Enter do what the main button does; Alt with an arrow looks at the next or the last step. */
export const useWorkKeys = (main: (() => void) | undefined, look: (by: 1 | -1) => void): void => {
  useEffect(() => {
    const heard = (event: KeyboardEvent): void => {
      if (event.ctrlKey && event.key === 'Enter') main?.();
      else if (event.altKey && event.key === 'ArrowDown') look(1);
      else if (event.altKey && event.key === 'ArrowUp') look(-1);
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', heard);
    return () => window.removeEventListener('keydown', heard);
  }, [main, look]);
};
