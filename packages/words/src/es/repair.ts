import type { repairEn } from '../en/repair.ts';
import type { Translation } from '../translation.ts';

export const repairEs = {
  'repair.not-in-definition': '“{id}” no está en la definición de esta válvula.',
  'repair.wrong-part':
    '{title} no va con esta válvula. Hecho para – {fits}. Esta válvula – {valve}. Déjelo en la camioneta.',
  'repair.wrong-tool':
    '{title} no va con esta válvula. Hecho para – {fits}. Esta válvula – {valve}. Dañaría el cilindro.',
  'repair.feature': '{feature}: {values}',
  'repair.features': '{first}; {rest}',
  'repair.either': '{first} o {rest}',
  'repair.no-part':
    'Ninguna pieza de la definición sirve como “{role}” para todas las versiones que quedan. No se adapta nada; averigüe cuál versión es, o deje el equipo en bypass.',
  'repair.too-hot':
    'El agua llega a {warmest}, más de lo que aguanta la versión fría (probabilidad de que sea la fría: {odds}). Ponga solo piezas para agua caliente, o pase el equipo antes del calentador.',
  'repair.maybe-too-hot':
    'El agua llega a {warmest}, más de lo que aguanta la versión fría, y la probabilidad de que sea la fría es {odds}.',
  'repair.maybe-too-hot-mend':
    'Distinga la versión antes de poner piezas; mientras tanto, solo piezas para agua caliente. Si es la fría, pase el equipo antes del calentador.',
  'repair.pressure-above': 'La presión de entrada es {pressure}; {family} aguanta {limit} como máximo.',
  'repair.pressure-above-mend': 'Ponga un regulador de presión antes del equipo, o revise el manómetro.',
  'repair.pressure-below':
    'La presión de entrada es {pressure}; {family} necesita al menos {limit} para moverse y succionar.',
  'repair.pressure-below-mend':
    'Busque una llave cerrada o una línea tapada antes del equipo, o ponga una bomba.',
  'repair.drain-control':
    'El retrolavado pide aquí de {floor} a {ceiling}, y lo instalado da {fitted}. Ponga: {control}.',
  'repair.no-drain-control':
    'El retrolavado pide aquí de {floor} a {ceiling}, y ningún control de drenaje de la definición queda ahí. No se adapta nada; pida al fabricante un control de ese flujo.',
  'repair.no-drain-window': 'No se puede elegir control de drenaje. {why} No se adapta nada.',
  'repair.substitute-refill':
    '{control} ({rate}) puede tomar su lugar: entonces cada tiempo de llenado se multiplica por {times}, y nada más cambia.',
  'repair.mend': '{fault}: {mend}.',
  'repair.undescribed':
    'No hay lista de piezas para esta marca. Anote cada número en piezas y cuerpo; lleve la pieza vieja y compare.',
  'repair.convert-check': 'Antes de convertir: {check}.',
  'repair.no-conversion':
    'La definición no tiene conversión a “{feature}: {to}” para las versiones que quedan. No se adapta nada.',
  'repair.unknown-conversion':
    'La conversión decidida “{written}” no nombra nada de esta familia; no se planea.',
  'repair.unknown-conversion-mend': 'Escriba característica y valor, uno de estos: {known}.',
  'repair.gap.fault':
    'No está claro qué falla en {unit} como para elegir piezas. La siguiente prueba dice más.',
} as const satisfies Translation<typeof repairEn>;
