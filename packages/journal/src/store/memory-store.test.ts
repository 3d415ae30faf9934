import { storeSuite } from '../testing/store-suite.ts';
import { MemoryStore } from './memory-store.ts';

storeSuite('memory', async () => {
  const store = new MemoryStore();
  return { store, reopen: async () => store, close: () => store.close() };
});
