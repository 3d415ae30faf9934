import type { appLeaveSafeEn } from '../en/app-leave-safe.ts';
import type { Translation } from '../translation.ts';

export const appLeaveSafeEs = {
  'app.leave-safe.title': 'Dejar el equipo seguro',
  'app.leave-safe.first': 'Antes, {time}',
  'app.leave-safe.service': 'De vuelta como estaba, y en servicio.',
  'app.leave-safe.bypass': 'Falta una pieza: cerrado, sin presión ni corriente, y en bypass.',
  'app.leave-safe.now': 'Ahora, 1 de {of}',
  'app.leave-safe.nothing-first': 'Puede quedarse como está.',
  'app.leave-safe.once-done': 'Hechos los pasos, la tarjeta dice:',
  'app.leave-safe.card': 'La tarjeta que queda en el equipo',
  'app.leave-safe.settings': 'Ajustes hasta entonces',
  'app.leave-safe.print': 'Imprimir la tarjeta',
  'app.leave-safe.save': 'Guardar como archivo',
  'app.leave-safe.to-work': 'Volver al trabajo',
} as const satisfies Translation<typeof appLeaveSafeEn>;
