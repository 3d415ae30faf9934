import type { Remarks } from '@brinewright/journal';

/** How many things about a site want to be looked at. */
export const remarkCount = ({ rivals, setAside, waiting, newer }: Remarks): number =>
  rivals.length + setAside.length + waiting.length + newer.length;
