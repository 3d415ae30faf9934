import { equivalentsOf, hardnessFromIons, molarMass, theoreticalSalt } from '@brinewright/physics';
import { fromUnit, type QuantityKind, toUnit } from '@brinewright/units';
import { numbersIn } from '../json-access.ts';
import { readTable } from '../read-data.ts';
import { claimsOf, readExamples } from '../read-examples.ts';
import type { Claim, Tolerance } from '../row.ts';

const between = (kind: QuantityKind, from: string, to: string) => (): number =>
  toUnit(fromUnit(1, from, kind), to);

const saltWorth = (saltUnit: string, exchangeUnit: string) => (): number => {
  const perEquivalent = theoreticalSalt.compute({ exchange: 1 }).saltMass;
  const salt = fromUnit(1, saltUnit, 'mass').si;
  return toUnit(fromUnit(salt / perEquivalent, 'eq', 'exchange'), exchangeUnit);
};

/** How each line of units.csv is computed, by its two names. */
const conversions: Readonly<Record<string, () => number>> = {
  'US gallon > L': between('volume', 'gal', 'L'),
  'imperial gallon > L': between('volume', 'imp gal', 'L'),
  'grain > mg': between('mass', 'gr', 'mg'),
  'pound avoirdupois > g': between('mass', 'lb', 'g'),
  'cubic foot > L': between('volume', 'ft3', 'L'),
  'cubic foot > US gal': between('volume', 'ft3', 'gal'),
  'psi > Pa': between('pressure', 'psi', 'Pa'),
  'bar > psi': between('pressure', 'bar', 'psi'),
  'foot of water at 60 F > psi': between('pressure', 'ftH2O', 'psi'),
  'US gal/min > L/s': between('flow', 'gpm', 'L/s'),
  'gpm/ft2 > m/h': between('superficial-velocity', 'gpm/ft2', 'm/h'),
  'gpm/ft2 > mm/s': between('superficial-velocity', 'gpm/ft2', 'mm/s'),
  'gpm/ft3 > bed volumes per hour': between('specific-flow', 'gpm/ft3', 'BV/h'),
  'lb/ft3 > g/L': between('salt-dose', 'lb/ft3', 'g/L'),
  'grain per US gallon > mg/L': between('concentration', 'gr/gal', 'mg/L'),
  'grain per imperial gallon (English or Clark degree) > mg/L as CaCO3': between(
    'hardness',
    'dege',
    'mg/L CaCO3',
  ),
  'German degree (10 mg/L CaO) > mg/L as CaCO3': between('hardness', 'degdH', 'mg/L CaCO3'),
  'German degree > mmol/L': between('hardness', 'degdH', 'mmol/L'),
  'French degree > mg/L as CaCO3': between('hardness', 'degfH', 'mg/L CaCO3'),
  'mmol/L of Ca+Mg > mg/L as CaCO3': between('hardness', 'mmol/L', 'mg/L CaCO3'),
  'meq/L > mg/L as CaCO3': between('hardness', 'meq/L', 'mg/L CaCO3'),
  'mg/L Ca > mg/L as CaCO3': () => (equivalentsOf('calcium', 1) * molarMass.calciumCarbonate) / 2,
  'mg/L Mg > mg/L as CaCO3': between('hardness', 'mg/L Mg', 'mg/L CaCO3'),
  'kilograin/ft3 (as CaCO3) > g/L as CaCO3': between('capacity', 'kgr/ft3', 'g/L CaCO3'),
  'kilograin/ft3 (as CaCO3) > eq/L': between('capacity', 'kgr/ft3', 'eq/L'),
  'grains CaCO3 exchanged per lb NaCl, theoretical > grain/lb': saltWorth('lb', 'gr'),
  'g CaCO3 exchanged per kg NaCl, theoretical > g/kg': saltWorth('kg', 'g CaCO3'),
};

const definitions = 'exact definitions (NIST SP 811, 2008) and IUPAC atomic weights';

/** As units.csv says: 1e-6, the foot of water 1e-4. */
const toleranceOf = (from: string): Tolerance => ({ rel: from.startsWith('foot of water') ? 1e-4 : 1e-6 });

const conversionClaims = (): readonly Claim[] =>
  readTable('units.csv').map((row) => {
    const name = `${row.text('from')} > ${row.text('to')}`;
    const convert = conversions[name];
    if (convert === undefined) throw new Error(`units.csv: no unit for ${name}`);
    return {
      id: `units ${row.line}`,
      title: name,
      source: definitions,
      mark: row.text('mark'),
      computed: convert(),
      expected: row.number('factor'),
      tolerance: toleranceOf(row.text('from')),
    };
  });

const inHardness = (si: number, symbol: string): number => toUnit({ kind: 'hardness', si }, symbol);

export const rows = (): readonly Claim[] => {
  const examples = readExamples('units-brine-examples.json');
  return [
    ...conversionClaims(),
    ...claimsOf(examples, 'U1', ({ input }) => {
      const { si } = fromUnit(input('gpg'), 'gpg', 'hardness');
      return {
        mg_L: inHardness(si, 'mg/L CaCO3'),
        mmol_L: inHardness(si, 'mmol/L'),
        german: inHardness(si, 'degdH'),
        french: inHardness(si, 'degfH'),
        english: inHardness(si, 'dege'),
      };
    }),
    ...claimsOf(examples, 'U2', ({ input }) => {
      const { hardness } = hardnessFromIons.compute({
        calcium: input('Ca_mg_L') * 1e-3,
        magnesium: input('Mg_mg_L') * 1e-3,
      });
      return { mg_L_CaCO3: inHardness(hardness, 'mg/L CaCO3'), gpg: inHardness(hardness, 'gpg') };
    }),
    ...claimsOf(examples, 'U7', ({ inputs }) => ({
      g_L: numbersIn(inputs, 'lb_ft3').map((dose) => toUnit(fromUnit(dose, 'lb/ft3', 'salt-dose'), 'g/L')),
    })),
  ];
};
