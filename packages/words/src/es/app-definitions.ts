import type { appDefinitionsEn } from '../en/app-definitions.ts';
import type { Translation } from '../translation.ts';

export const appDefinitionsEs: Translation<typeof appDefinitionsEn> = {
  'app.definitions.title': 'Definiciones',
  'app.definitions.under': 'Las válvulas, controles y fallas que se conocen en este aparato.',
  'app.definitions.undescribed': 'Sin describir',
  'app.definitions.counts':
    '{variants, plural, one {# versión} other {# versiones}}, {parts, plural, one {# pieza} other {# piezas}}, {tells, plural, one {# seña} other {# señas}}, {faults, plural, one {# falla} other {# fallas}}',
  'app.definitions.own': 'propia',
  'app.definitions.variants': '{count, plural, one {# versión} other {# versiones}}',
  'app.definitions.source': 'Fuente: {source}',
  'app.definitions.like': 'Como {like}',
  'app.definitions.features': 'Características',
  'app.definitions.tells': 'Señas',
  'app.definitions.parts': 'Piezas',
  'app.definitions.faults': 'Fallas',
  'app.definitions.looks-wrong': 'Parece mal y está bien',
  'app.definitions.lint': 'Lo que se encuentra al revisarla',
  'app.definitions.lint.none': 'Al revisarla no se encuentra nada.',
  'app.definitions.count': '{name}: {count} en total',
  'app.definitions.add': 'Agregar de un archivo',
  'app.definitions.add.under':
    'Un archivo YAML con la forma de las definiciones incluidas. Se guarda en este aparato y se envía al taller.',
  'app.definitions.files': 'Archivos propios',
  'app.definitions.files.none': 'Todavía no hay archivos propios.',
  'app.definitions.file.used': 'en uso',
  'app.definitions.file.left-out': 'fuera de uso',
  'app.definitions.added': '{name} quedó guardado.',
  'app.definitions.not-read': '{name} no se leyó. No es un archivo de texto.',
  'app.definitions.too-large':
    '{name} no se guardó. Tiene más de 1 MB; una definición tiene unos cientos de líneas.',
  'app.definitions.all': 'Todas las definiciones',
};
