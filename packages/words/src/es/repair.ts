import type { repairEn } from '../en/repair.ts';
import type { Translation } from '../translation.ts';

export const repairEs = {
  'repair.not-in-definition': '“{id}” no está en la definición de esta válvula.',
  'repair.wrong-part': '{title} es para {fits}; esta válvula es {valve}. Déjelo en la camioneta.',
  'repair.wrong-tool': '{title} es para {fits}; esta válvula es {valve}. Dañaría el cilindro.',
  'repair.no-part':
    'Ninguna pieza de la definición sirve como {role} para todas las versiones que quedan. No se adapta nada; averigüe cuál versión es, o deje el equipo en bypass.',
  'repair.too-hot':
    'El agua llega a {warmest}, más de lo que aguanta la versión fría (probabilidad de que sea la fría: {odds}). Ponga solo piezas para agua caliente, o pase el equipo antes del calentador.',
  'repair.substitute-refill':
    '{control} ({rate}) puede tomar su lugar: entonces cada tiempo de llenado se multiplica por {times}, y nada más cambia.',
  'repair.mend': '{fault}: {mend}',
  'repair.undescribed':
    'No hay lista de piezas para esta marca. Anote cada número en piezas y cuerpo; lleve la pieza vieja y compare.',
  'repair.convert-check': 'Antes de convertir: {check}.',
  'repair.no-conversion':
    'La definición no tiene conversión a {feature} {to} para las versiones que quedan. No se adapta nada.',
  'repair.unknown-conversion':
    'La conversión decidida “{written}” no nombra nada de esta familia; no se planea.',
  'repair.unknown-conversion-mend': 'Escriba característica y valor, uno de estos: {known}.',
  'repair.gap.fault':
    'No está claro qué falla en {unit} como para elegir piezas. La siguiente prueba dice más.',
} as const satisfies Translation<typeof repairEn>;
