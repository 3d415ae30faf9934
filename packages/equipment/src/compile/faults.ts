import type { Path } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import type { BoreDefinition } from '../model/bore.ts';
import type { CautionDefinition, ChangeDefinition, ComplaintDefinition, Fault } from '../model/fault.ts';
import type { WrittenCaution, WrittenChange, WrittenComplaint, WrittenFault } from '../schema/diagnosis.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import { compileEach, fitsOf, needed, titleOr } from './compiling.ts';

const bothKinds = ['softener', 'filter'] as const;

/** The faults this family can have; a leak between ports that no seal of its bores parts is none of them. */
export const compileFaults = (
  written: WrittenFamily,
  bores: readonly BoreDefinition[],
  report: Report,
): readonly Fault[] =>
  compileEach(written.faults, 'faults', (fault, id, at) => faultOf(fault, id, at, report)).filter((fault) => {
    const { path } = fault;
    if (path === undefined || bores.length === 0 || bores.some((bore) => parts(bore, path))) return true;
    report.note(['faults', fault.id, 'path'], {
      code: 'fault.path-not-here',
      values: { path: path.join('+') },
    });
    return false;
  });

/** Whether one seal stands between the two ports. */
const parts = (bore: BoreDefinition, [a, b]: readonly [string, string]): boolean =>
  bore.ports.some((port, index) => {
    const next = bore.ports[index + 1];
    return (port === a && next === b) || (port === b && next === a);
  });

const faultOf = (written: WrittenFault, id: string, at: Path, report: Report): Fault | undefined => {
  const title = needed(written.title, at, 'title', report);
  const explains = needed(written.explains, at, 'explains', report);
  const mend = needed(written.mend, at, 'mend', report);
  if (title === undefined || explains === undefined || mend === undefined) return undefined;
  const { repair } = written;
  return {
    id,
    title,
    explains,
    mend,
    where: written.where ?? 'valve',
    odds: written.odds ?? 1,
    kinds: written.kinds ?? bothKinds,
    fits: fitsOf(written.fits),
    ...pathOf(written, at, report),
    afterService: written['after-service'] ?? false,
    repair: {
      replace: repair?.replace ?? [],
      do: repair?.do ?? [],
      settings: repair?.settings ?? false,
    },
  };
};

const pathOf = (written: WrittenFault, at: Path, report: Report): Pick<Fault, 'path'> => {
  if (written.path === undefined) return {};
  const [a, b, ...others] = written.path.split('+');
  if (a !== undefined && b !== undefined && others.length === 0) return { path: [a, b] };
  report.error([...at, 'path'], { code: 'fault.two-ports', values: { path: written.path } });
  return {};
};

export const compileComplaints = (written: WrittenFamily): readonly ComplaintDefinition[] =>
  compileEach(written.complaints, 'complaints', complaintOf);

const wordsOf = (written: WrittenComplaint['words']) => ({ en: written?.en ?? [], es: written?.es ?? [] });

const complaintOf = (written: WrittenComplaint, id: string): ComplaintDefinition => ({
  id,
  title: titleOr(written.title, id),
  words: wordsOf(written.words),
  faults: written.faults ?? {},
});

export const compileChanges = (written: WrittenFamily): readonly ChangeDefinition[] =>
  compileEach(written.changes, 'changes', changeOf);

const changeOf = (written: WrittenChange, id: string): ChangeDefinition => ({
  id,
  title: titleOr(written.title, id),
  words: wordsOf(written.words),
  raises: written.raises ?? {},
});

export const compileCautions = (written: WrittenFamily, report: Report): readonly CautionDefinition[] =>
  compileEach(written.cautions, 'cautions', (caution, id, at) => cautionOf(caution, id, at, report));

const cautionOf = (
  written: WrittenCaution,
  id: string,
  at: Path,
  report: Report,
): CautionDefinition | undefined => {
  const signal = needed(written.signal, at, 'signal', report);
  const title = needed(written.title, at, 'title', report);
  const does = needed(written.does, at, 'does', report);
  const act = needed(written.act, at, 'act', report);
  if (signal === undefined || title === undefined || does === undefined || act === undefined)
    return undefined;
  const { fact } = written;
  return {
    id,
    signal,
    title,
    does,
    act,
    ...(fact === undefined ? {} : { fact }),
    always: written.always ?? [],
  };
};
