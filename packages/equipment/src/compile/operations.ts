import type { Path } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import type { Operation, WorkState } from '../model/operation.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import type { WrittenOperation, WrittenState } from '../schema/operation.ts';
import { compileEach, fitsOf, minutesOf, needed } from './compiling.ts';
import { toolId } from './parts.ts';

export const compileOperations = (written: WrittenFamily, report: Report): readonly Operation[] =>
  compileEach(written.operations, 'operations', (one, id, at) => operationOf(one, id, at, report));

const operationOf = (
  written: WrittenOperation,
  id: string,
  at: Path,
  report: Report,
): Operation | undefined => {
  const order = needed(written.order, at, 'order', report);
  if (order === undefined) return undefined;
  const { counts, side } = written;
  return {
    id,
    order,
    how: written.how ?? [],
    phase: written.phase ?? 'open',
    after: alternatives(written.after),
    needs: stateOf(written.needs),
    makes: stateOf(written.makes),
    tools: (written.tools ?? []).map(toolId),
    ...(side === undefined ? {} : { side }),
    minutes: minutesOf(written.minutes),
    takesOut: written['takes-out'] ?? [],
    ...(counts === undefined ? {} : { counts }),
    hazards: written.hazards ?? [],
    lookOvers: written['look-overs'] ?? [],
    consumables: written.consumables ?? [],
    ...backOf(written),
    fits: fitsOf(written.fits),
    always: written.always ?? false,
  };
};

const backOf = (written: WrittenOperation): Pick<Operation, 'back'> => {
  const { back } = written;
  if (back === undefined) return {};
  return {
    back: {
      order: back.order,
      how: back.how ?? [],
      minutes: back.minutes ?? minutesOf(written.minutes).hands,
      lookOvers: back['look-overs'] ?? [],
      hazards: back.hazards ?? [],
    },
  };
};

/** `[a, b]` is one set; `[[a], [b]]` are two ways. */
const alternatives = (written: WrittenOperation['after']): readonly (readonly string[])[] => {
  const sets = (written ?? []).filter((one) => typeof one !== 'string');
  const plain = (written ?? []).filter((one) => typeof one === 'string');
  return plain.length > 0 ? [plain] : sets;
};

export const stateOf = (written: WrittenState | undefined): WorkState => {
  const { water, pressure, power, piston, temperature } = written ?? {};
  return {
    ...(water === undefined ? {} : { water }),
    ...(pressure === undefined ? {} : { pressure }),
    ...(power === undefined ? {} : { power }),
    ...(piston === undefined ? {} : { piston }),
    ...(temperature === undefined ? {} : { temperature }),
  };
};
