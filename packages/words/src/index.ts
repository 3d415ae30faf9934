export { catalogues, english, type MessageKey, spanish } from './catalogue.ts';
export { type Language, type Message, type MessageValue, message, type Text } from './message.ts';
export type { Issue, Path, Place, Result, Severity } from './result.ts';
