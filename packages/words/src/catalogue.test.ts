import { describe, expect, test } from 'vitest';
import { catalogues, english, type MessageKey, spanish } from './catalogue.ts';
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
import { compilePattern } from './pattern.ts';
import { sameInBoth } from './same-in-both.ts';

const isKey = (text: string): text is MessageKey => Object.hasOwn(english, text);
const keys = Object.keys(english).filter(isKey);

const placeholders = (text: string, language: 'en' | 'es'): readonly string[] =>
  compilePattern(text, language)
    .placeholders.map(({ name, use }) => `${name} ${use}`)
    .sort();

/** Letters outside placeholders: '{a} · {b}' has none and may well be the same in both. */
const hasWords = (text: string): boolean => /\p{L}/u.test(text.replace(/\{\w+\}/g, ''));

describe('the catalogues', () => {
  test('both languages have the same keys', () => {
    expect(Object.keys(spanish).sort()).toEqual(Object.keys(english).sort());
  });

  test('no key stands in two areas, where one would hide the other', () => {
    const areas = [
      appEn,
      cautionsEn,
      cliEn,
      diagnosisEn,
      equipmentEn,
      issuesEn,
      papersEn,
      physicsEn,
      planEn,
      programEn,
      proofEn,
      recognitionEn,
      recordEn,
      repairEn,
      serverEn,
      situationEn,
      unitsEn,
    ];
    const all = areas.flatMap((area) => Object.keys(area));
    expect(all.filter((key, place) => all.indexOf(key) !== place)).toEqual([]);
    expect(all.length).toBe(keys.length);
  });

  test('keys are dotted words in lower case', () => {
    expect(
      keys.filter((key) => !/^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.[a-z0-9]+(?:-[a-z0-9]+)*)+$/.test(key)),
    ).toEqual([]);
  });

  test('every text is a pattern, and both languages fill the same placeholders in the same way', () => {
    const differing = keys.filter(
      (key) => placeholders(english[key], 'en').join() !== placeholders(spanish[key], 'es').join(),
    );
    expect(differing).toEqual([]);
  });

  test('placeholders are shown, counted or chosen by; figures are never formatted inside a pattern', () => {
    const formatting = keys.filter((key) =>
      placeholders(english[key], 'en').some((text) => text.endsWith(' other')),
    );
    expect(formatting).toEqual([]);
  });

  test.each(['en', 'es'] as const)('no text is empty or has spaces around it (%s)', (language) => {
    expect(keys.filter((key) => !/^\S(?:.*\S)?$/s.test(catalogues[language][key]))).toEqual([]);
  });

  test('no text is left untranslated, but for the few that are the same in both', () => {
    const same = keys.filter((key) => english[key] === spanish[key]).map((key): string => english[key]);
    expect([...new Set(same.filter(hasWords))].sort()).toEqual([...sameInBoth].sort());
  });

  test('a sentence in English is one in Spanish', () => {
    const ending = (text: string): string => /[.?:]$/.exec(text)?.[0] ?? '';
    const differing = keys.filter((key) => !spanish[key].endsWith(ending(english[key])));
    expect(differing).toEqual([]);
  });

  test('Spanish has one word for one thing, the one that the definitions have', () => {
    const others =
      /(?<!\p{L})(?:camas?|caudal(?:es)?|aspiración|rellenado|relleno|separador(?:es)?|manguito|controlador|desvío)(?!\p{L})/iu;
    expect(keys.filter((key) => others.test(spanish[key]))).toEqual([]);
  });

  test.each(['en', 'es'] as const)('nobody is shouted at, begged or praised (%s)', (language) => {
    const tone = /[!¡]|\bplease\b|\boops\b|\bpor favor\b/i;
    expect(keys.filter((key) => tone.test(catalogues[language][key]))).toEqual([]);
  });
});
