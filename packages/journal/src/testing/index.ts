export { deviceStoreSuite, type OpenedDevice } from './device-store-suite.ts';
export { type LossyWay, lossyWay } from './lossy-way.ts';
export { aHand, aNote, anEntry, aRedaction, entriesOf, type Hand, nextUuid } from './some-entries.ts';
export { batchOf, type Opened, storeSuite } from './store-suite.ts';
export { type OpenedWay, transportSuite } from './transport-suite.ts';
export { correctionOf, noteIn, Party, PartyDevice, redactionOf } from './trial-party.ts';
