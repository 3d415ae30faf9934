export { type Bundle, type BundleRead, bundleOf, importBundle, readBundle } from './device/bundle.ts';
export { counts, type DeviceCounts, standingIn } from './device/counts.ts';
export type {
  DeviceState,
  DeviceStore,
  DeviceTransaction,
  Held,
  StreamState,
} from './device/device-store.ts';
export { type DriveOptions, type Driver, driveSync, type Nap, type Waits } from './device/drive-sync.ts';
export { follow, followAll, type Unfollowed, unfollow } from './device/follow.ts';
export {
  type DeviceCall,
  type MemoryDeviceOptions,
  MemoryDeviceStore,
  newDevice,
} from './device/memory-device-store.ts';
export { type SyncResult, syncRound } from './device/sync-round.ts';
export { type Taken, takeEntries } from './device/take-entries.ts';
export type { TripOptions } from './device/trip.ts';
export { type Hand, writeEntries } from './device/write-entries.ts';
export { type About, type Draft, type Entry, entrySchema, type Json, type Sealed } from './entry/entry.ts';
export { filesOf } from './entry/files-of.ts';
export { byCodeUnit, byFoldOrder, isBefore } from './entry/order.ts';
export {
  isTombstone,
  longestEntry,
  type ReadEntry,
  readEntry,
  tombstone,
  type WireEntry,
} from './entry/read-entry.ts';
export { type Refusal, refusals } from './entry/refusal.ts';
export { seal, sha256Hex } from './entry/seal.ts';
export { fold, visitOf } from './fold/fold.ts';
export { foldStock } from './fold/fold-stock.ts';
export { foldWorkshop } from './fold/fold-workshop.ts';
export type {
  FoldedSite,
  FoldedStock,
  FoldedVisit,
  FoldedWorkshop,
  HistoryLine,
  Remarks,
  Rival,
  Said,
  SetAside,
  ShownFigures,
  StockLine,
  Waiting,
} from './fold/folded.ts';
export { historyOf } from './fold/history.ts';
export { kindOfStream, type StreamKind } from './fold/kind-of-stream.ts';
export { originOf } from './fold/one-of-each.ts';
export { saidOf } from './fold/said.ts';
export { draftsOfVisit } from './import/drafts-of-visit.ts';
export { isKindName, type KindName, kindNames, type Payload } from './kinds/payloads.ts';
export { everWritten, kindNow } from './kinds/versions.ts';
export type {
  Batch,
  Heads,
  JournalStore,
  Logged,
  LogState,
  Vector,
  Verdict,
  Wanted,
} from './store/journal-store.ts';
export {
  type Judgement,
  judge,
  lamportReach,
  numberOf,
  type There,
  withOrigins,
} from './store/judge.ts';
export { assertAllNew, MemoryStore } from './store/memory-store.ts';
export { isRedaction, redact, targetOf } from './store/redaction.ts';
export { vectorOf } from './store/vector.ts';
export { answerOffer, answerPull, answerPush, type Session } from './sync/answer.ts';
export {
  type Fetch,
  type HttpAnswer,
  type HttpRequest,
  type HttpTransportOptions,
  httpTransport,
} from './sync/http-transport.ts';
export { type LoopbackOptions, loopback } from './sync/loopback.ts';
export * from './sync/messages.ts';
export type { Reply, Transport } from './sync/transport.ts';
