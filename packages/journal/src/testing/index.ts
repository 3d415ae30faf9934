export { aHand, aNote, anEntry, aRedaction, entriesOf, type Hand, nextUuid } from './some-entries.ts';
export { batchOf, type Opened, storeSuite } from './store-suite.ts';
