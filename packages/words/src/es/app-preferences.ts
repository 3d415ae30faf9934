import type { appPreferencesEn } from '../en/app-preferences.ts';
import type { Translation } from '../translation.ts';

export const appPreferencesEs: Translation<typeof appPreferencesEn> = {
  'app.preferences.title': 'Preferencias',
  'app.preferences.theme': 'Luz',
  'app.preferences.theme.device': 'como el aparato',
  'app.preferences.theme.light': 'de día',
  'app.preferences.theme.dark': 'sótano',
  'app.preferences.theme.contrast': 'contraste',
  'app.preferences.text': 'Tamaño de letra',
  'app.preferences.text.usual': 'normal',
  'app.preferences.text.large': 'grande',
  'app.preferences.text.largest': 'la más grande',
  'app.preferences.gloves': 'Guantes',
  'app.preferences.gloves.off': 'respuestas normales',
  'app.preferences.gloves.on': 'respuestas grandes',
  'app.preferences.language': 'Idioma',
  'app.preferences.language.en': 'English',
  'app.preferences.language.es': 'Español',
  'app.preferences.system': 'Unidades',
  'app.preferences.system.us': 'EE. UU.',
  'app.preferences.system.metric': 'métricas',
  'app.preferences.storage': 'Espacio',
  'app.preferences.storage.used': '{used} de {quota} en uso.',
  'app.preferences.storage.kept': 'El aparato lo guarda hasta que alguien lo quite.',
  'app.preferences.storage.may-go': 'El aparato lo puede borrar cuando se llene.',
  'app.preferences.storage.keep': 'Guardarlo para siempre',
  'app.preferences.storage.full': 'Este aparato está casi lleno.',
  'app.preferences.storage.full.why': 'Están en uso más de 80 de 100 partes del espacio de esta app.',
  'app.preferences.bundle': 'Todo lo que hay en este aparato',
  'app.preferences.bundle.under':
    'Un archivo con todos los registros y fotos. Leído en otro aparato queda allá junto con lo que ese tiene.',
  'app.preferences.bundle.save': 'Guardarlo como archivo',
  'app.preferences.bundle.read': 'Leer un archivo así',
  'app.preferences.bundle.was-read':
    '{fresh, plural, =0 {No traía nada nuevo.} one {Un registro era nuevo.} other {# registros eran nuevos.}}',
  'app.preferences.bundle.not-read': 'El archivo no se leyó.',
  'app.preferences.bundle.not-read.why': 'No es un archivo guardado por esta app, o es de otro taller.',
  'app.record.title': 'Dónde está el registro',
  'app.record.waiting':
    '{count, plural, =0 {Ningún registro espera envío.} one {Un registro espera envío.} other {# registros esperan envío.}}',
  'app.record.files':
    '{count, plural, =0 {Ninguna foto espera envío.} one {Una foto espera envío.} other {# fotos esperan envío.}}',
  'app.record.sent':
    '{count, plural, =0 {Todavía no hay registros en el servidor.} one {Un registro está seguro en el servidor.} other {# registros están seguros en el servidor.}}',
  'app.record.refused':
    '{count, plural, one {El servidor no aceptó un registro.} other {El servidor no aceptó # registros.}}',
  'app.record.refused.why': 'Se quedan aquí y se pueden guardar como archivo. Motivo: {reason}.',
  'app.record.now': 'Enviar ahora',
  'app.record.no-network': 'Sin red desde las {time}.',
  'app.record.no-network.why':
    'Todas las etapas funcionan; lo que espera está seguro en este aparato y se va solo.',
  'app.record.not-allowed': 'El taller ya no da entrada a este aparato.',
  'app.record.not-allowed.why': 'Todo queda en este aparato. El dueño lo puede enlazar de nuevo.',
  'app.record.back': 'Atrás',
};
