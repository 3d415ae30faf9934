import type { RecordEntries } from '../../engine/stage-props.ts';
import type { FirstMinuteView } from '../../engine/views/first-minute-view.ts';
import type { Place } from '../../offline/draft-about.ts';

export type PartProps = {
  readonly view: FirstMinuteView;
  readonly about: Place;
  readonly record: RecordEntries;
};
