import type { appProveEn } from '../en/app-prove.ts';
import type { Translation } from '../translation.ts';

export const appProveEs: Translation<typeof appProveEn> = {
  'app.prove.passed': '{passed} de {of, plural, one {# comprobación} other {# comprobaciones}} pasan',
  'app.prove.now': 'Ahora',
  'app.prove.tomorrow': 'Mañana',
  'app.prove.tomorrow.how': 'Esto solo lo muestra una regeneración. Dejarlo a quien abre por la mañana.',
  'app.prove.sure': 'Dentro de los límites: {p}.',
  'app.prove.predicted': 'Previsto',
  'app.prove.predicted.of': 'Previsto {figure}.',
  'app.prove.limit': 'Límite',
  'app.prove.seen': 'Visto',
  'app.prove.not-seen': 'No visto',
  'app.prove.take': 'Tomar la lectura',
  'app.prove.again': 'Leer otra vez',
  'app.prove.hand-over': 'Entregar',
  'app.prove.behind': 'De dónde salen los límites y lo previsto',
  'app.prove.how': 'Cómo se lee',
  'app.prove.how.says':
    'Punto: la lectura, con qué tan segura es. Corchetes: los límites. Rayas: lo previsto.',
  'app.prove.undone': 'Retirado',
  'app.prove.nothing': 'Todavía no hay nada que comprobar',
};
