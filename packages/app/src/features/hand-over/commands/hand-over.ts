import type { Draft } from '@brinewright/journal';
import type { Again } from '../../../engine/views/hand-over/remarks.ts';
import type { Shown } from '../../../engine/views/hand-over/shown.ts';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

/** What is said at the door. */
export type Told = { readonly to: string; readonly said: string; readonly signed: string };

/** The name that signs, and the hand-over with the figures as they were shown. `at` is an ISO instant. */
export const handOver = (
  about: Place,
  { to, said, signed }: Told,
  shown: Shown,
  at: string,
): readonly Draft[] => [
  ...(signed.trim() === '' ? [] : [aboutVisit(about, 'signature-given', { name: signed.trim(), at })]),
  aboutVisit(about, 'handed-over', {
    ...(to.trim() === '' ? {} : { to: to.trim() }),
    ...(said.trim() === '' ? {} : { said: said.trim() }),
    at,
    shown: plain(shown),
  }),
];

/** A paper left the device: what stood on it is kept. */
export const adviceGiven = (about: Place, shown: Shown): readonly Draft[] => [
  aboutVisit(about, 'advice-given', plain(shown)),
];

const plain = ({ engine, definitions, figures }: Shown) => ({ engine, definitions, figures: { ...figures } });

/** A rival value is settled by writing one of them again. */
export const sayAgain = ({ stream }: Place, { kind, payload, about }: Again): readonly Draft[] => [
  { stream, kind: `${kind}/1`, payload: JSON.parse(payload), about },
];
