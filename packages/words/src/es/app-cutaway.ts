import type { appCutawayEn } from '../en/app-cutaway.ts';
import type { Translation } from '../translation.ts';

export const appCutawayEs: Translation<typeof appCutawayEn> = {
  'app.cutaway.no-family':
    'Las definiciones de esta válvula no están en este aparato; por eso no se puede mostrar en corte.',
  'app.cutaway.no-bore':
    'Nadie ha descrito el interior de esta válvula; por eso no se puede mostrar en corte.',
  'app.cutaway.piston.right': 'el pistón correcto',
  'app.cutaway.piston.of': 'pistón de {build}',
  'app.cutaway.no-sleeve': 'sin el casquillo',
  'app.cutaway.title': 'La válvula en corte',
  'app.cutaway.stop': 'Posición',
  'app.cutaway.next': 'Sigue: {stop}',
  'app.cutaway.back': 'Volver',
  'app.cutaway.joined': 'Lo que pasa ahora',
  'app.cutaway.tear': 'Rompa un sello y vea',
  'app.cutaway.seal': 'Sello {seal}',
  'app.cutaway.seal.suspected': 'Sello {seal}, aquí probablemente roto',
  'app.cutaway.tear.sound': 'Todos sanos',
  'app.cutaway.tear.quiet': 'Con raya cortada: la rotura no se nota en esta posición.',
  'app.cutaway.tear.shows': 'Una rotura del sello {seal} se nota primero en: {stop}.',
  'app.cutaway.tear.never': 'Una rotura del sello {seal} no se nota en ninguna posición.',
  'app.cutaway.piston': 'Pistón instalado',
  'app.cutaway.likeliest': 'Se dibuja la versión más probable de las que quedan.',
  'app.cutaway.takes': 'Dura',
  'app.cutaway.flows': 'Flujo',
  'app.cutaway.moves': 'En total',
  'app.cutaway.timeline': 'Regeneración, a escala',
  'app.cutaway.none': 'Sin corte',
};
