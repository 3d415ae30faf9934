import type { Equipment, Family } from '@brinewright/equipment';
import type { Assessment, Conditioner, FigureId, Visit } from '@brinewright/service';
import type { UnitSystem } from '@brinewright/units';
import type { Language, Message, MessageKey, MessageValue, Text } from '@brinewright/words';
import type { DrawingOptions } from '../drawings/drawing.ts';
import { type Reader, say, sayKey, sayText } from '../say.ts';

/** Citations by source key; they stay in the language of their source. */
export type Citations = Readonly<Record<string, { readonly cite: string; readonly status: string }>>;

export type PaperOptions = {
  readonly language: Language;
  readonly system: UnitSystem;
  readonly equipment: Equipment;
  /** The typeface as a data: address; without it the system's own face serves. */
  readonly fontUri?: string;
  readonly sources?: Citations;
};

/** What every section of a document reads. `shown` gathers the figures that were shown, in order. */
export type Sheet = {
  readonly visit: Visit;
  readonly assessment: Assessment;
  readonly reader: Reader;
  readonly family: Family | undefined;
  readonly subject: Conditioner | undefined;
  readonly sources: Citations;
  readonly shown: FigureId[];
  /** What figures are called where they are shown, for those that have no word of their own. */
  readonly labels: Map<FigureId, string>;
  /** Assumptions that were named as to be measured first: once is enough. */
  readonly toMeasure: Set<FigureId>;
  readonly say: (what: Message) => string;
  readonly word: (key: MessageKey, values?: Readonly<Record<string, MessageValue>>) => string;
  readonly text: (text: Text) => string;
};

export const openSheet = (visit: Visit, assessment: Assessment, options: PaperOptions): Sheet => {
  const { language, system, equipment, sources = {} } = options;
  const reader: Reader = { language, system, currency: visit.site.prices?.currency };
  const subject = visit.conditioners.find(({ id }) => id === visit.subject);
  return {
    visit,
    assessment,
    reader,
    subject,
    family: subject === undefined ? undefined : equipment.families.get(subject.family),
    sources,
    shown: [],
    labels: new Map(),
    toMeasure: new Set(),
    say: (what) => say(reader, what),
    word: (key, values) => sayKey(reader, key, values),
    text: (text) => sayText(reader, text),
  };
};

/** Drawings are made twice, once for a wide sheet and once for a phone: words are never scaled down. */
export const widths = { wide: 720, half: 346, narrow: 340 } as const;

export const drawingOptions = ({ reader }: Sheet, width: number, id: string): DrawingOptions => ({
  ...reader,
  width,
  id,
});
