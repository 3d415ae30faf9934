export { catalogues, english, type MessageKey, spanish } from './catalogue.ts';
export { formatMessage, formatText, missingValues } from './format.ts';
export { formatNumber } from './format-number.ts';
export { kindName, type ProblemMessages, quantityProblemMessages } from './format-problem.ts';
export {
  type FormattedQuantity,
  formatQuantity,
  type QuantityFormat,
  type Reader,
} from './format-quantity.ts';
export { type Language, type Message, type MessageValue, message, type Text } from './message.ts';
export { compilePattern, type Pattern, type Placeholder, type PlaceholderUse } from './pattern.ts';
export type { Issue, Path, Place, Result, Severity } from './result.ts';
