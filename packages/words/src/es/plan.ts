import type { planEn } from '../en/plan.ts';
import type { Translation } from '../translation.ts';
export const planEs = {
  'plan.list': '{first}, {rest}',
  'plan.gap.targets': 'Todavía no hay nada que hacer. Encontrar la falla o anotar lo que se va a hacer.',

  'plan.says.maker':
    'Nadie ha descrito esta marca. Cómo se abre lo dicen las instrucciones del fabricante; sin ellas, dejarla segura.',
  'plan.says.whole-stack':
    'Un sello malo pide el paquete completo. Los sellos se gastan juntos y la mano de obra es la misma. Práctica común, sin fuente.',
  'plan.says.water-stays-on': 'Nada de esto pide cortar el agua.',
  'plan.says.only-when': 'Solo con {when}: {orders}.',
  'plan.says.feature': '{feature} {values}',

  'plan.gate.variant': 'La válvula se conoce hasta donde cambian refacciones y herramientas.',
  'plan.gate.variant-undescribed': 'Nada que distinguir: nadie ha descrito esta marca.',
  'plan.gate.variant-open': 'Faltan por distinguir válvulas que llevan otras refacciones o herramientas.',
  'plan.gate.variant-open-ask':
    'Faltan por distinguir válvulas que llevan otras refacciones o herramientas. Lo siguiente por ver: {ask}',
  'plan.gate.kit': 'Las refacciones a la mano son las de esta válvula.',
  'plan.gate.kit-none': 'No se necesitan refacciones.',
  'plan.gate.kit-undescribed':
    'Nadie ha descrito sus refacciones. Lo que se cambia se compara con la pieza vieja antes de meterlo.',
  'plan.gate.kit-missing': 'No están a la mano o falta compararlas con la válvula: {parts}.',
  'plan.gate.kit-open': 'Aún no se sabe qué refacciones lleva; el juego no se puede comparar.',
  'plan.gate.tools': 'Las herramientas especiales a la mano son las de esta válvula.',
  'plan.gate.tools-none': 'No se necesitan herramientas especiales.',
  'plan.gate.tools-missing': 'No están a la mano o falta compararlas con la válvula: {tools}.',
  'plan.gate.photographed': 'Hay fotos de ajustes, reloj, cableado y daños.',
  'plan.gate.photographed-not':
    'Fotografiar ajustes, reloj, cableado y daños. Un corte de luz puede borrar el programa.',
  'plan.gate.price': 'El precio está acordado.',
  'plan.gate.price-not': 'El precio todavía no está acordado.',
  'plan.gate.outage': 'El paro está acordado: fuera de servicio unos {time}; mientras tanto, {building}.',
  'plan.gate.outage-not':
    'El paro todavía no está acordado. Son unos {time} fuera de servicio; mientras tanto, {building}.',
  'plan.building.raw': 'agua cruda por el bypass',
  'plan.building.raw-or-none': 'agua cruda por el bypass, o nada donde no hay bypass',
  'plan.building.none': 'sin agua',
  'plan.gate.way-back': 'Se sabe cómo volver atrás: {way}',
  'plan.gate.way-back-not': 'Anotar cómo queda el equipo si el trabajo no se termina hoy.',

  'plan.stopped.gate': 'Falta lo acordado antes de cortar. El agua sigue abierta hasta entonces.',

  'plan.stopped.gate-passed-over':
    'El equipo ya está cerrado sin haber comparado y acordado todo antes. Completar lo que falta o dejar el equipo seguro.',

  'plan.target.settings': 'ajustes del programa',

  'plan.piece.seal': 'sellos',
  'plan.piece.spacer': 'espaciadores',
  'plan.piece.ring': 'anillos',
  'plan.piece.plug': 'tapones',
  'plan.miscount.out-missing':
    'Salieron {counted} {piece}; el paquete lleva {listed}. Una pieza sigue en la válvula o se perdió.',
  'plan.miscount.out-extra':
    'Salieron {counted} {piece}; el paquete lleva {listed}. Había una pieza doble, o el trabajo anterior dejó una vieja.',
  'plan.miscount.in-missing':
    'Entraron {counted} {piece}; el paquete lleva {listed}. Un hueco deja pasar agua y daña la válvula.',
  'plan.miscount.in-extra':
    'Entraron {counted} {piece}; el paquete lleva {listed}. Una pieza doble daña la válvula al apretarla.',
  'plan.miscount-mend.out-missing':
    'Buscar con lámpara en el cilindro, detrás del último espaciador, en el gancho y el extractor, en el pistón, en el piso y en la cubeta. Luego contar de nuevo.',
  'plan.miscount-mend.out-extra':
    'Poner las piezas junto a la lista y hallar la que sobra. Buscar más con lámpara en el cilindro. Meter solo lo que dice la lista.',
  'plan.miscount-mend.in-missing':
    'Buscar en la mesa, en la bolsa del juego y entre las piezas viejas. Sacar el paquete hasta el hueco y meter la pieza. Luego contar de nuevo.',
  'plan.miscount-mend.in-extra':
    'Sacar otra vez el paquete, buscar con lámpara una pieza vieja en el cilindro y empezar de nuevo con la lista.',

  'plan.leave.service': 'El equipo queda armado como estaba y en servicio.',
  'plan.leave.untouched': 'No se abrió nada; el equipo sigue en servicio como estaba.',
  'plan.leave.found-in-bypass': 'No se abrió nada. El equipo estaba en bypass; el agua sale sin tratar.',
  'plan.leave.bypass-powered':
    'El equipo queda en bypass y cerrado, pero con corriente: desconectarlo. No debe recibir presión.',
  'plan.leave.bypass': 'El equipo queda en bypass, cerrado y desconectado. No debe recibir presión.',
  'plan.leave.bypass-hard': 'El agua sale dura hasta que el equipo vuelva a servicio.',
  'plan.leave.bypass-raw': 'El agua sale sin filtrar hasta que el equipo vuelva a servicio.',
  'plan.leave.bagged': 'Las piezas están en una bolsa atada a la válvula. No completan el paquete.',
  'plan.leave.called-for': 'Se llamó por: “{words}”',
  'plan.leave.done': 'Hecho hoy: {what}.',
  'plan.leave.new-part': '{part} (pieza nueva)',
  'plan.leave.still': 'Falta por hacer: {what}.',
  'plan.leave.leak-day': 'Mientras tanto se van al drenaje unos {water} al día.',
  'plan.leave.leak-cost-day': 'Mientras tanto se van al drenaje unos {water} al día; cuestan {cost} al día.',
  'plan.leave.setting': '{setting}: volver a {value}, ahora {now}.',
  'plan.leave.run': '{setting}: {value}, como estaba.',
  'plan.leave.run-safe':
    '{setting}: {value} hasta la próxima visita. Los {found} encontrados son más de lo que suaviza la sal de los ajustes encontrados; se reserva el consumo de un día.',
  'plan.setting.backwash': 'Retrolavado',
  'plan.setting.brine': 'Salmuera',
  'plan.setting.draw': 'Succión de salmuera',
  'plan.setting.slow-rinse': 'Enjuague lento',
  'plan.setting.fast-rinse': 'Enjuague rápido',
  'plan.setting.refill': 'Llenado',
  'plan.setting.volume': 'Volumen entre regeneraciones',
  'plan.setting.days': 'Días entre regeneraciones',
  'plan.setting.at': 'Inicio',

  'plan.warn.boiler':
    'Avisar a los de la caldera: el agua cruda hace sarro. La caldera queda apagada o con otra alimentación hasta que vuelva el agua suave.',
  'plan.warn.laundry': 'Avisar a la lavandería: ninguna carga empieza con agua cruda.',
  'plan.warn.dialysis':
    'Hay diálisis en esta agua. Parar: decide su propia gente, y queda fuera de esta herramienta.',
  'plan.warn.food': 'Avisar a la cocina: agua cruda, y nadie la bebe durante el trabajo.',
  'plan.warn.fire':
    'Avisar a los de incendio: no se corta agua de rociadores o mangueras sin un plan de ellos.',
  'plan.warn.eyewash':
    'Avisar a seguridad: lavaojos y regadera necesitan agua siempre. Antes queda lista otra.',
  'plan.warn.cooling': 'Avisar a quien lleva el enfriamiento: sin agua se para o se calienta.',
  'plan.warn.ice': 'Avisar a los de la máquina de hielo: apagarla y tirar el primer hielo después.',
  'plan.warn.guests':
    'Avisar a los huéspedes: un rato sin agua o con agua dura, y nadie la bebe durante el trabajo.',
  'plan.warn.high-building':
    'El edificio queda más alto que el tanque. Abrir una llave al aire antes de vaciar: el vacío aplasta el tanque.',
  'plan.raw-pass.boiler':
    'En la regeneración pasa agua cruda a la salida, y de ella depende una caldera de vapor.',
  'plan.raw-pass.laundry':
    'En la regeneración pasa agua cruda a la salida, y de ella dependen lavadoras extractoras.',
  'plan.raw-pass.dialysis':
    'En la regeneración pasa agua cruda a la salida, y de ella depende una diálisis. La diálisis queda fuera de esta herramienta.',
  'plan.raw-pass-mend':
    'Una válvula que cierre la salida, un segundo equipo, o regenerar a una hora sin consumo, con la palabra del dueño.',
  'plan.shut-outlet.fire': 'En la regeneración la salida se cierra, y de ella depende agua contra incendio.',
  'plan.shut-outlet.eyewash': 'En la regeneración la salida se cierra, y de ella depende un lavaojos.',
  'plan.shut-outlet.cooling': 'En la regeneración la salida se cierra, y de ella depende un enfriamiento.',
  'plan.outlet.not-settled': 'Si así fuera ({odds}; falta aclarar qué hace la salida): {says}',
  'plan.outlet.not-known': 'Puede ser lo uno o lo otro; no se sabe qué hace la salida. Si así fuera: {says}',
  'plan.shut-outlet-mend':
    'Alimentarlo desde antes del equipo, o tener un plan escrito para el tiempo de regeneración.',

  'plan.no-operation': 'Ninguna operación de la definición llega a esto: {what}. El plan no la incluye.',
  'plan.no-operation-mend':
    'Agregar una operación con takes-out, o hacerlo según las instrucciones del fabricante.',
  'plan.state.water': 'Agua',
  'plan.state.pressure': 'Presión',
  'plan.state.power': 'Corriente',
  'plan.state.piston': 'Pistón',
  'plan.state.temperature': 'Temperatura',
  'plan.wanted.on': 'abierta o conectada',
  'plan.wanted.off': 'cortada',
  'plan.wanted.full': 'completa',
  'plan.wanted.none': 'ninguna',
  'plan.wanted.home': 'en inicio',
  'plan.wanted.removal': 'en la posición para sacarlo',
  'plan.wanted.cool': 'frío',
  'plan.need': '{order} necesita otro estado. {state}: {wanted}. Nada del plan lo logra antes.',
  'plan.need-mend': 'Lograrlo, anotarlo en “apart”, y el plan sigue desde ahí.',
  'plan.out-of-order': '{order} no cabe en ese lugar del plan.',
  'plan.out-of-order-mend': 'Corregir lo anotado como hecho, o lo que la definición pide antes.',
  'plan.state-left': '{state}: ninguna operación de la definición lo regresa.',
  'plan.state-left-mend': 'Regresarlo a mano antes de poner el equipo en servicio.',
  'plan.not-counted': '{order}: anotado como hecho sin cuenta.',
  'plan.not-counted-mend': 'Contar las piezas y anotar la cuenta al lado.',
  'plan.taken-as-off':
    'Se toma como quitado, aunque no está anotado como hecho o está anotado como puesto: {orders}. Lo anotado como hecho no sale de otro modo. El plan lo vuelve a poner.',
  'plan.taken-as-off-mend':
    'Mirar el equipo. Anotarlo como hecho, o anotar lo que ya está puesto, con todo lo que salió después.',
  'plan.says.shut-first':
    'El equipo está abierto y su agua no está anotada como cerrada. Cerrarla antes que nada.',
} as const satisfies Translation<typeof planEn>;
