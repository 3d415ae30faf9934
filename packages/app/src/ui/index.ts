export { Answer, type AnswerProps, Answers } from './parts/answers.tsx';
export { Button, ButtonLink, type ButtonProps } from './parts/button.tsx';
export { Caution, type CautionProps } from './parts/caution.tsx';
export { Choice, type ChoiceProps, type Option } from './parts/choice.tsx';
export { Counter, type CounterProps } from './parts/counter.tsx';
export { Drawing, type DrawingView, Picture } from './parts/drawing.tsx';
export { Field, type FieldProps } from './parts/field.tsx';
export { Derivation, type DerivationView, Figure, type FigureProps } from './parts/figure.tsx';
export { Heading, Note, Section } from './parts/heading.tsx';
export { Icon, type IconName } from './parts/icon.tsx';
export { Mark } from './parts/mark.tsx';
export { Odds, type OddsRow } from './parts/odds.tsx';
export { Progress, type ProgressProps } from './parts/progress.tsx';
export { emptyEntry, type QuantityEntry, readEntry, unitShown } from './parts/quantity-entry.ts';
export { QuantityField, type QuantityFieldProps } from './parts/quantity-field.tsx';
export { Facts, Row, type RowProps, Rows } from './parts/rows.tsx';
export { Sheet, type SheetProps } from './parts/sheet.tsx';
export {
  type RecordPlace,
  SheetContext,
  type SheetFrame,
  type StageMark,
  type TitleBlock,
} from './parts/sheet-frame.ts';
export { Empty, InHand, Notice, Problem, Told } from './parts/states.tsx';
export { Timer, type TimerProps, useNow } from './parts/timer.tsx';
export { clockText, elapsed, type TimerState } from './parts/timer-state.ts';
export { useWide } from './parts/use-wide.ts';
export { Verdict, type VerdictProps } from './parts/verdict.tsx';
export { WhereRecord } from './parts/where-record.tsx';
