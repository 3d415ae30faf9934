import type { cautionsEn } from '../en/cautions.ts';
import type { Translation } from '../translation.ts';
export const cautionsEs = {
  'caution.danger': 'Peligro',
  'caution.warning': 'Advertencia',
  'caution.caution': 'Precaución',
  'caution.notice': 'Aviso',
  'caution.codes':
    'El trabajo eléctrico, de plomería, de reflujo y de descarga sigue los códigos locales y las instrucciones del fabricante, que mandan sobre esta herramienta. El trabajo con licencia es de gente con licencia.',
} as const satisfies Translation<typeof cautionsEn>;
