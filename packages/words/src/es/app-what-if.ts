import type { appWhatIfEn } from '../en/app-what-if.ts';
import type { Translation } from '../translation.ts';

export const appWhatIfEs: Translation<typeof appWhatIfEn> = {
  'app.what-if.title': 'Y si',
  'app.what-if.under': 'Entran números, sale el programa. No se guarda nada; el enlace lleva los números.',
  'app.what-if.numbers': 'Números',
  'app.what-if.copy': 'Copiar el enlace',
  'app.what-if.copied': 'El enlace está copiado.',
  'app.what-if.not-copied': 'El enlace no se copió; está en la línea de dirección.',
  'app.what-if.clear': 'Vaciar',
  'app.what-if.taken':
    'Para un suavizador sin describir, de resina catiónica, con un control de minutos enteros.',
};
