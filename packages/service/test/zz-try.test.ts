import fc from 'fast-check';
import { it } from 'vitest';
import { loadEquipment } from '@brinewright/equipment/load-files';
import { assess } from '../src/assess.ts';
import { arbitraryVisit } from '../src/testing/arbitrary-visit.ts';
import { faultsOf } from '../src/testing/faults-of.ts';
import { visitSchema } from '../src/visit/schema.ts';
it('tries', () => {
  const loaded = loadEquipment();
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.issues));
  const eq = loaded.value.equipment;
  const N = Number(process.env.N ?? 300);
  const docs = fc.sample(arbitraryVisit(eq), { numRuns: N, seed: Number(process.env.SEED ?? 1) });
  let invalid = 0; const tally = new Map<string, number>(); let ms = 0, fm=0; const states = new Map<string, number>();
  for (const doc of docs) {
    const p = visitSchema.safeParse(doc);
    if (!p.success) { invalid++; const m = 'INVALID ' + JSON.stringify(p.error.issues[0]).slice(0,200); tally.set(m, (tally.get(m) ?? 0)+1); continue; }
    const t = performance.now();
    try {
      const a = assess(p.data, eq, { now: '2026-11-25T10:00:00Z', effort: 'quick' });
      ms += performance.now() - t;
      for (const [n, s] of Object.entries(a.stages)) { const k = n + ' ' + s.state; states.set(k, (states.get(k)??0)+1); }
      const t2 = performance.now();
      for (const f of new Set(faultsOf(a))) { const k = f.replace(/\d+/g, '#').slice(0,150); tally.set(k, (tally.get(k) ?? 0) + 1); }
      fm += performance.now() - t2;
    } catch (e) { const k = 'THROW ' + String(e instanceof Error ? e.stack : e).split('\n').slice(0,5).join(' | ').replaceAll('file:///work/main/packages/',''); tally.set(k, (tally.get(k) ?? 0)+1); }
  }
  console.log(invalid, 'invalid', ms/N, 'ms each', fm/N, states);
  for (const [k, n] of [...tally].sort((a,b)=>b[1]-a[1]).slice(0,60)) console.log(n, k);
}, 600000);
