import type { WorkshopName } from '../http/house.ts';
import type { Cell, Frame } from './page.ts';
import type { View } from './view.ts';

/** Which workshop a page belongs to, and what its title block says of it. */
export type Place = {
  readonly name: WorkshopName;
  /** Of the workshop as its people call it. */
  readonly title: string;
  readonly cells: readonly Cell[];
  /** The field app has been built and lies beside the pages. */
  readonly hasApp: boolean;
};

export const baseOf = ({ name }: Place): string => `/${name}`;

export const appAddress = (place: Place): string => `${baseOf(place)}/app/`;

export const visitAddress = (place: Place, stream: string, visit: string): string =>
  `${baseOf(place)}/visits/${stream}/${visit}`;

export const siteAddress = (place: Place, stream: string): string => `${baseOf(place)}/sites/${stream}`;

export const unitAddress = (place: Place, stream: string, unit: string): string =>
  `${baseOf(place)}/units/${stream}/${unit}`;

/** The frame of a page within a workshop, with the way back to its visits. */
export const within = (view: View, place: Place, title: string): Frame => ({
  title,
  belongs: place.title,
  home: `${baseOf(place)}/`,
  back: { to: `${baseOf(place)}/`, says: view.word('server.visits') },
  cells: place.cells,
});
