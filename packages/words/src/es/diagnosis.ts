import type { diagnosisEn } from '../en/diagnosis.ts';
import type { Translation } from '../translation.ts';

export const diagnosisEs = {
  'diagnosis.none-of-these': 'Ninguna de estas',
  'diagnosis.with-others':
    '{fault} (con {count, plural, one {otra falla} other {otras # fallas}} de la misma reparación)',
  'diagnosis.says.decided': 'Decidido en el sitio: {fault}.',
  'diagnosis.says.act': '{fault}: {odds}. Bastante claro para actuar.',
  'diagnosis.says.act-alike':
    '{fault} o {other}: {odds}. La reparación es la misma; no hace falta distinguirlas.',
  'diagnosis.says.test': 'La más probable: {fault}, {odds}. Sigue: {test}.',
  'diagnosis.says.cannot-tell':
    'No queda prueba que ayude. La más probable es {first}, {odds}; todavía no se distingue de {second}.',
  'diagnosis.says.begin': 'Nada señala una falla todavía. Empiece con: {test}.',
  'diagnosis.says.nothing-told': 'No se dijo, vio ni midió nada que señale una falla.',
  'diagnosis.says.none-leads': 'Ninguna falla de la lista lo explica bien. Sigue: {test}.',
  'diagnosis.says.none-fits':
    'Ninguna falla de la lista lo explica y no queda prueba que ayude. Anote lo que se ve, con fotos.',
  'diagnosis.ask.changed': '¿Qué cambió desde que trabajaba bien?',
  'diagnosis.ask.last-work': '¿Quién trabajó en él por última vez, cuándo y qué hizo?',
  'diagnosis.clue.measured': '{test} – {value}, {outcome}',
  'diagnosis.clue.seen': '{test} – {outcome}',
  'diagnosis.clue.computed': '{clue} (calculado con los ajustes encontrados)',
  'diagnosis.clue.complaint': 'Queja: {complaint}',
  'diagnosis.clue.change': 'Cambió: {change}',
  'diagnosis.clue.serviced-recently': 'Alguien trabajó en él hace menos de dos meses',
  'diagnosis.clue.serviced-long-ago': 'Nadie trabajó en él en los últimos dos meses',
  'diagnosis.clue.service-not-known': 'No se sabe quién trabajó en él por última vez',
  'diagnosis.gap.no-faults':
    'La definición de {family} no tiene fallas para este tipo de equipo. Tómelas de una base con “like” o escríbalas.',
  'diagnosis.gap.reading-not-judged':
    '“{test}”: la lectura se guarda, pero no se conoce el flujo con que se compara. Mídalo o indique qué lleva instalado.',
  'diagnosis.gap.test-not-judged':
    '“{test}” diría algo si se conociera el flujo con que se compara. Mídalo o indique qué lleva instalado.',
} as const satisfies Translation<typeof diagnosisEn>;
