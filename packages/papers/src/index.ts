export { bedOf, limitOf, windowFlows } from './documents/backwash-section.ts';
export {
  derivation,
  figure,
  figureText,
  nameOfFigure,
  type Way,
  waysShown,
  wayToFigure,
} from './documents/derivation.ts';
export { alike, quantityAt } from './documents/figure-values.ts';
export { likeliest, stopThatShows, tornSeal } from './documents/found-section.ts';
export { measureFirstSentences, ofCheck, ofSettings, ofWindow } from './documents/measure-first.ts';
export {
  effortName,
  faultName,
  featureName,
  fitsName,
  minutesName,
  operationName,
  tellName,
  toolName,
  valueName,
  wordOf,
} from './documents/naming.ts';
export { customerNotes } from './documents/notes-sections.ts';
export {
  hazardsOf,
  howOf,
  lookOversOf,
  orderOf,
  type WorkStep,
} from './documents/operation-lines.ts';
export { isFinding, isOfWindow, isOther, neighbourSaid } from './documents/program-section.ts';
export { toleranceOf, verdictWords } from './documents/proof-section.ts';
export { report } from './documents/report.ts';
export { type Citations, openSheet, type PaperOptions, type Sheet } from './documents/sheet.ts';
export { regenerationSteps } from './documents/timeline-section.ts';
export { dated } from './documents/title-block.ts';
export { howWords, waterFields, waterWords } from './documents/water-section.ts';
export { leaveSafeCard, workSheet } from './documents/work-sheet.ts';
export { runsHard, yearWords } from './documents/year-table.ts';
export { backwashWindow, type FlowWindow } from './drawings/backwash-window.ts';
export { type Bed, bedDrawing, type Rise } from './drawings/bed.ts';
export type { BoreDrawing } from './drawings/cutaway/bore-drawing.ts';
export { type CutawayOptions, cutaway } from './drawings/cutaway/cutaway.ts';
export { boreDrawing } from './drawings/cutaway/from-definition.ts';
export { stopWords } from './drawings/cutaway/sayings.ts';
export { type BrineStep, leakPast, type Passage, passagesIn } from './drawings/cutaway/waters.ts';
export type { Drawing, DrawingOptions } from './drawings/drawing.ts';
export { explodedStack } from './drawings/exploded-stack/exploded-stack.ts';
export { type StackLayers, stackLayers } from './drawings/exploded-stack/stack-layers.ts';
export type { ExplodedStack } from './drawings/exploded-stack/stack-model.ts';
export { isolation } from './drawings/isolation/isolation.ts';
export type { Isolation } from './drawings/isolation/line-model.ts';
export { type Odds, oddsBars, oddsText, shownPercent } from './drawings/odds-bars.ts';
export { type Stack, stackList } from './drawings/stack-list.ts';
export { stepWords, type TimelineStep, timeline } from './drawings/timeline.ts';
export { type Tolerance, toleranceLine } from './drawings/tolerance-line.ts';
export { type Content, type Markup, raw, written } from './markup/element.ts';
export { classed, html } from './markup/html.ts';
export { drawingCss, standaloneCss } from './theme/drawing-css.ts';
export { fontFile } from './theme/font-file.ts';
export { tokenCss } from './theme/tokens.ts';
