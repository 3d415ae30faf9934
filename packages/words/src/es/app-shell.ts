import type { appShellEn } from '../en/app-shell.ts';
import type { Translation } from '../translation.ts';

export const appShellEs: Translation<typeof appShellEn> = {
  'app.ui.picture': 'El dibujo',
  'app.ui.why': 'Por qué y qué falta',
  'app.ui.stages': 'Etapas de la visita',
  'app.ui.stage.open': 'sin empezar',
  'app.ui.stage.begun': 'empezada',
  'app.ui.stage.done': 'hecha',
  'app.ui.record.device': 'En este aparato',
  'app.ui.record.sent': 'Enviado',
  'app.ui.record.refused': 'Rechazado: {count}',
  'app.ui.answer.undo': 'elegido; toque otra vez para quitarlo',
  'app.ui.quantity.no-number': 'Esto no es un número. Escríbalo en cifras, como 18 o 0.5.',
  'app.ui.quantity.unit-of': 'Unidad de {label}',
  'app.ui.quantity.cannot-see': 'No se ve',
  'app.ui.quantity.unsure': 'No es seguro',
  'app.ui.odds.for': 'A favor: {what}.',
  'app.ui.odds.against': 'En contra: {what}.',
  'app.ui.counter.of': 'de {of}',
  'app.ui.counter.said': '{label}: {count} de {of}',
  'app.ui.counter.add': '{label}: una más',
  'app.ui.counter.take': '{label}: una menos',
  'app.ui.drawing.in-words': 'El dibujo en palabras',
  'app.ui.timer.start': 'Iniciar',
  'app.ui.timer.stop': 'Parar',
  'app.ui.timer.clear': 'A cero',
};
