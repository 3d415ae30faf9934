import type { proofEn } from '../en/proof.ts';
import type { Translation } from '../translation.ts';

export const proofEs = {
  'proof.check.outlet-hardness': 'Dureza en la salida',
  'proof.check.drain-in-service': 'Flujo al drenaje en servicio',
  'proof.check.backwash-flow': 'Flujo de retrolavado',
  'proof.check.brine-draw': 'Succión de salmuera, con cubeta',
  'proof.check.refill-water': 'Agua de llenado',
  'proof.check.iron-at-the-outlet': 'Hierro en la salida',
  'proof.check.pressure-loss': 'Pérdida de presión en el filtro',
  'proof.check.air-gap': 'Espacio de aire del drenaje',
  'proof.check.no-leaks': 'Sin fugas a presión plena',
  'proof.check.every-step-run': 'Cada paso probado una vez',
  'proof.check.settings-keyed': 'Ajustes puestos y releídos',
  'proof.check.clock-right': 'Hora correcta',
  'proof.check.bypass-in-service': 'Bypass de vuelta en servicio',
  'proof.check.outlet-hardness-after': 'Dureza en la salida tras una regeneración',
  'proof.check.no-salt-taste': 'Sin sabor a sal tras una regeneración',
  'proof.check.brine-level-back': 'Nivel de salmuera de vuelta en su lugar',
  'proof.check.regenerated-on-time': 'Regeneró cuando debía',
  'proof.check.hardness-at-the-end': 'Dureza el último día, con tira del cliente',
  'proof.decide.u':
    'Una lectura con incertidumbre de {u} lo decidiría: una cubeta mayor o un instrumento mejor.',
  'proof.decide.repeats':
    'Una lectura con incertidumbre de {u} lo decidiría: una cubeta mayor, o {repeats} lecturas como esta.',
  'proof.decide.on-the-limit': 'Está justo en el límite; ninguna repetición de esta prueba lo decide.',
  'proof.summary': '{pass} pasaron, {fail} fallaron, {undecided} sin decidir, {open} abiertas.',
} as const satisfies Translation<typeof proofEn>;
