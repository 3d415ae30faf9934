import { type Sheet, valueName, wordOf } from '@brinewright/papers';
import type { PartLine } from '@brinewright/service';
import { alone, percentName } from '../names.ts';
import { moneyName } from './prices.ts';
import type { PartView } from './repair-types.ts';

export const partName = ({ family, text }: Sheet, id: string): string => {
  const part = family?.parts.find((one) => one.id === id);
  return part === undefined ? id : text(part.title);
};

/** Above it a part is as good as certain. */
const certain = 0.995;

export const partView = (sheet: Sheet, line: PartLine): PartView => {
  const { part: id, count, price, p } = line;
  const number = sheet.family?.parts.find((one) => one.id === id)?.number;
  return {
    id,
    name: partName(sheet, id),
    ...(number === undefined ? {} : { number }),
    count,
    why: whyOf(sheet, id),
    ...(p > certain ? {} : { odds: percentName(sheet, p) }),
    ...(price === undefined ? {} : { price: moneyName(sheet, price) }),
    ...whereIs(sheet, line),
    used: usedOf(sheet, id),
  };
};

/** In the hand and held against the valve; in the van by the list; or to be ordered. */
const whereIs = ({ visit }: Sheet, { part, count, have }: PartLine): Pick<PartView, 'where' | 'order'> => {
  if ((visit.gate?.kit ?? []).includes(part)) return { where: 'in-hand', order: 0 };
  if (have === undefined) return { where: 'not-written', order: 0 };
  return have >= count ? { where: 'in-van', order: 0 } : { where: 'missing', order: count - have };
};

const usedOf = ({ visit }: Sheet, id: string): number =>
  (visit.used ?? []).filter(({ part }) => part === id).reduce((sum, { count }) => sum + count, 0);

/** The targets that this part, or what its kit holds, serves. */
const whyOf = (sheet: Sheet, id: string): string => {
  const { repair } = sheet.assessment.stages;
  const part = sheet.family?.parts.find((one) => one.id === id);
  if (part === undefined || repair.state === 'blocked') return '';
  const held = Object.keys(part.holds).flatMap(
    (one) => sheet.family?.parts.find((other) => other.id === one) ?? [],
  );
  const roles = new Set([part, ...held].map(({ is }) => is));
  const names = repair.value.targets.flatMap((target) => {
    if (target.kind === 'replace' && roles.has(target.role)) return [wordOf(sheet, 'role', target.role)];
    return target.kind === 'convert' ? [valueName(sheet, target.feature, target.to)] : [];
  });
  return alone([...new Set(names)].join(', '));
};
