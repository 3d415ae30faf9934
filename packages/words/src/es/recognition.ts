import type { recognitionEn } from '../en/recognition.ts';
import type { Translation } from '../translation.ts';

export const recognitionEs = {
  'recognition.why.undescribed':
    'Nada que distinguir: nadie ha descrito esta marca. Guíese por lo que hace y anote los números que encuentre en ella.',
  'recognition.why.single': 'Nada que distinguir: esta familia tiene una sola variante.',
  'recognition.why.no-target': 'Nada de lo previsto hasta ahora depende de la variante.',
  'recognition.why.one-left': 'Queda una variante.',
  'recognition.why.same-for-all':
    '{count, plural, one {Queda # variante.} other {Quedan # variantes, y todas llevan las mismas piezas, herramientas y ajustes.}}',
  'recognition.why.clear-enough':
    'Bastante claro para seguir. {count, plural, one {Otra opción} other {Otras # opciones}} de piezas, herramientas o ajustes, con 5 % o menos en conjunto.',
  'recognition.why.open':
    '{count, plural, one {Queda una opción} other {Quedan # opciones}} de piezas, herramientas o ajustes. Sigue: {tell}',
  'recognition.why.no-tell-left':
    '{count, plural, one {Queda una opción} other {Quedan # opciones}} de piezas, herramientas o ajustes, y ninguna seña más las separa. Lleve lo que cada una necesita.',
  'recognition.why.disagree': 'Las respuestas no concuerdan. Mire otra vez: {doubt} (respuesta: {answer}).',
  'recognition.why.disagree-or-converted':
    'Las respuestas no concuerdan. Mire otra vez: {doubt} (respuesta: {answer}). O se convirtió de {from} a {to}.',
  'recognition.gap.tell': 'Falta distinguir: {tell}',
  'recognition.gap.no-variant':
    'No queda ninguna variante de {family}: sus reglas “never” las excluyen todas. Corrija la definición.',
  'recognition.unknown-answer': '{tell} No existe la respuesta “{answer}”. Se guarda y no se usa.',
  'recognition.unknown-answer-mend': 'Escriba una de estas: {answers}, cannot-see, unsure.',
  'recognition.no-such-size': '{tell} {value} no se acerca a ninguna medida de esta familia. No se usa.',
  'recognition.no-such-size-mend':
    'Revise la unidad de medida y mida otra vez. Si sigue igual, es otra familia.',
  'recognition.unknown-value':
    'La característica “{feature}” no tiene el valor “{value}” en esta familia. No se usa.',
  'recognition.unknown-value-mend': 'Escriba uno de estos: {known}.',
  'recognition.unknown-value-none': 'La familia no tiene esa característica. “equipment show” las muestra.',
} as const satisfies Translation<typeof recognitionEn>;
