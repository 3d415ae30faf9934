import { appEn } from './en/app.ts';
import { cautionsEn } from './en/cautions.ts';
import { cliEn } from './en/cli.ts';
import { diagnosisEn } from './en/diagnosis.ts';
import { equipmentEn } from './en/equipment.ts';
import { issuesEn } from './en/issues.ts';
import { papersEn } from './en/papers.ts';
import { physicsEn } from './en/physics.ts';
import { planEn } from './en/plan.ts';
import { programEn } from './en/program.ts';
import { proofEn } from './en/proof.ts';
import { recognitionEn } from './en/recognition.ts';
import { recordEn } from './en/record.ts';
import { repairEn } from './en/repair.ts';
import { serverEn } from './en/server.ts';
import { situationEn } from './en/situation.ts';
import { unitsEn } from './en/units.ts';
import { appEs } from './es/app.ts';
import { cautionsEs } from './es/cautions.ts';
import { cliEs } from './es/cli.ts';
import { diagnosisEs } from './es/diagnosis.ts';
import { equipmentEs } from './es/equipment.ts';
import { issuesEs } from './es/issues.ts';
import { papersEs } from './es/papers.ts';
import { physicsEs } from './es/physics.ts';
import { planEs } from './es/plan.ts';
import { programEs } from './es/program.ts';
import { proofEs } from './es/proof.ts';
import { recognitionEs } from './es/recognition.ts';
import { recordEs } from './es/record.ts';
import { repairEs } from './es/repair.ts';
import { serverEs } from './es/server.ts';
import { situationEs } from './es/situation.ts';
import { unitsEs } from './es/units.ts';
import type { Language } from './message.ts';

export const english = {
  ...unitsEn,
  ...issuesEn,
  ...physicsEn,
  ...equipmentEn,
  ...situationEn,
  ...recognitionEn,
  ...diagnosisEn,
  ...repairEn,
  ...planEn,
  ...programEn,
  ...proofEn,
  ...papersEn,
  ...cliEn,
  ...recordEn,
  ...serverEn,
  ...cautionsEn,
  ...appEn,
} as const;

/** The English catalogue is the type: a key that is not there does not compile. */
export type MessageKey = keyof typeof english;

export const spanish: Readonly<Record<MessageKey, string>> = {
  ...unitsEs,
  ...issuesEs,
  ...physicsEs,
  ...equipmentEs,
  ...situationEs,
  ...recognitionEs,
  ...diagnosisEs,
  ...repairEs,
  ...planEs,
  ...programEs,
  ...proofEs,
  ...papersEs,
  ...cliEs,
  ...recordEs,
  ...serverEs,
  ...cautionsEs,
  ...appEs,
};

export const catalogues: Readonly<Record<Language, Readonly<Record<MessageKey, string>>>> = {
  en: english,
  es: spanish,
};
