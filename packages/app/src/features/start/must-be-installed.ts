/** Apple's browsers clear what a page keeps after a week without use; an app on the home screen is left alone. */
export const mustBeInstalled = (): boolean =>
  isApple(navigator.userAgent, navigator.maxTouchPoints) && !matchMedia('(display-mode: standalone)').matches;

/** A tablet of theirs calls itself a desk computer, but one that can be touched. */
export const isApple = (agent: string, touches: number): boolean =>
  /iPhone|iPad|iPod/u.test(agent) || (agent.includes('Macintosh') && touches > 1);
