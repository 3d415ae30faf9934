import type { programEn } from '../en/program.ts';
import type { Translation } from '../translation.ts';

export const programEs = {
  'program.step.backwash': 'Retrolavado',
  'program.step.brine': 'Salmuera y enjuague lento',
  'program.step.draw': 'Succión de salmuera',
  'program.step.slow-rinse': 'Enjuague lento',
  'program.step.fast-rinse': 'Enjuague rápido',
  'program.step.refill': 'Llenado',
  'program.filter-interval':
    'Retrolave por calendario hasta conocer la pérdida de presión del lecho: anótela limpia y otra vez antes de un retrolavado.',
  'program.found-too-much':
    'Como se encontró, cada regeneración recibe {found} de sal donde se programa {dose}: se desperdicia sal y hay más salmuera que enjuagar.',
  'program.found-too-little':
    'Como se encontró, cada regeneración recibe {found} de sal donde se programa {dose}: el agua sale dura antes de tiempo.',
  'program.found-no-rinse':
    'Como se encontró, la succión toma {draw} y el paso dura solo {step}: termina antes que la salmuera y no enjuaga nada. De ahí el agua salada.',
  'program.found-short-rinse':
    'Como se encontró, la succión toma {draw} de los {step} y quedan solo {rinsed} para enjuagar. Con menos de un volumen de lecho el agua sabe a sal.',
  'program.found-hard-early':
    'Como se encontró, la sal ablanda {full} y el equipo espera hasta {asked}: el agua sale dura antes de regenerar.',
  'program.once.add-water':
    'Una vez: el tanque tiene salmuera para solo {standing} de sal. Agregue {more} de agua al tanque de salmuera y espere de dos a cuatro horas antes de la próxima regeneración.',
  'program.potassium':
    'Cloruro de potasio: su salmuera es más débil en frío, así que el llenado sigue la temperatura. Su tabla es de memoria; pese la primera carga.',
  'program.sodium': 'El ablandamiento agrega {sodium} de sodio al agua.',
  'program.iron-much': '{iron} de hierro es más de lo que debe llevar un suavizador: ponga un filtro antes.',
  'program.iron-some':
    '{iron} de hierro: regenere al menos cada cuatro días y limpie la resina dos veces al año.',
  'program.control-instead':
    'O deje el llenado en {time} y ponga {control}: eso da {dose}. El tiempo o el control, nunca ambos.',
  'program.leak': '{day} al día se van al drenaje en servicio, {year} al año.',
  'program.gap.nothing': 'Todavía no se puede programar nada: faltan dureza, volumen de lecho y flujos.',
  'program.gap.prices': 'No se conocen los precios en {site}; la diferencia se da en masa y volumen.',
  'program.bed-too-small':
    'El lecho ablanda {full} y un día consume {daily}: no dura un día. Regenere en cuanto lo pida el medidor, o ponga un segundo tanque.',
  'program.beyond-controller': '{step} necesita {exact} y el control admite {most} como máximo.',
  'program.below-controller': '{step} necesita {exact} y el control admite {least} como mínimo.',
  'program.dose-not-read': 'La dosis decidida “{dose}” no se puede leer; se usa la usual.',
  'program.dose-not-read-mend': 'Escríbala con su unidad, como 8 lb/ft3.',
  'program.window.empty.supply': 'El suministro no puede levantar este lecho.',
  'program.window.empty.drain': 'El drenaje no puede llevar lo que este lecho necesita.',
  'program.window.empty.height':
    'El agua más fría saca el lecho antes de que la más caliente lo levante lo suficiente.',
  'program.window.choice.pump': 'un suministro mayor, o un retrolavado cuando nada más consuma',
  'program.window.choice.smaller-tank': 'dos tanques más angostos, retrolavados uno tras otro',
  'program.window.choice.drain': 'una línea de drenaje mayor',
  'program.window.choice.compromise':
    '{flow} todo el año: mantiene el lecho adentro y lo levanta {lift} en el agua más caliente; entonces retrolave más tiempo',
  'program.window.choice.less-bed': 'menos lecho, para que tenga espacio',
  'program.window.choice.two-controls': 'un control de drenaje para invierno y otro para verano',
  'program.window.fit-below':
    'El retrolavado instalado de {fitted} es débil para este lecho: ponga {control}.',
  'program.window.fit-above':
    'El retrolavado instalado de {fitted} es fuerte para este lecho: ponga {control}.',
  'program.window.fit-below-rinse':
    'El retrolavado instalado de {fitted} es débil para este lecho: ponga {control}. Los tiempos de aquí son para él; hasta ponerlo, el enjuague rápido es de {rinse}.',
  'program.window.fit-above-rinse':
    'El retrolavado instalado de {fitted} es fuerte para este lecho: ponga {control}. Los tiempos de aquí son para él; hasta ponerlo, el enjuague rápido es de {rinse}.',
  'program.window.nearly-below':
    'El retrolavado instalado de {fitted} queda apenas debajo de la ventana, por menos de lo que se conoce. {control} quedaría dentro.',
  'program.window.nearly-above':
    'El retrolavado instalado de {fitted} queda apenas arriba de la ventana, por menos de lo que se conoce. {control} quedaría dentro.',
  'program.set-draw-cut':
    'Con estos ajustes la succión toma {draw} y su paso termina a los {step}: queda salmuera y el agua sale salada. Tome una dosis menor.',
  'program.set-short-rinse':
    'Con estos ajustes solo {rinsed} enjuagan después de la salmuera: el agua sale salada. Tome una dosis menor.',
  'program.no-reserve':
    'No se conoce el consumo de agua por día: nada se guarda de reserva y el último día puede salir dura.',
  'program.window.fitted-below':
    'El retrolavado de {fitted} es débil para este lecho, y ningún control de drenaje de la definición queda en la ventana.',
  'program.window.fitted-above':
    'El retrolavado de {fitted} es fuerte para este lecho, y ningún control de drenaje de la definición queda en la ventana.',
  'program.window.spread':
    'El otro método (Ergun) ve {ergun} de expansión con este flujo en el agua más fría, y hay espacio para {most}. Ponga una cubeta en el drenaje y busque perlas.',
  'derivation.rule.as-read': 'como se leyó en la prueba',
  'derivation.rule.nearest': 'al tiempo más cercano que admite el control',
  'derivation.rule.upward': 'al siguiente tiempo más largo que admite el control',
  'derivation.rule.downward': 'hacia abajo, a lo que admite el control',
  'derivation.rule.below': 'el siguiente tiempo más corto que admite el control',
  'derivation.rule.above': 'el siguiente tiempo más largo que admite el control',
  'derivation.rule.same': 'lo mismo',
  'derivation.rule.shorter': 'el más corto de los dos',
  'derivation.rule.dose-as-found': 'se conserva la encontrada, entre 6 y 10 lb/ft³',
  'derivation.rule.one-day': 'un día promedio',
  'derivation.rule.no-reserve': 'el lecho no dura un día, así que no se guarda reserva',
  'derivation.rule.whole-days': 'días enteros, al menos uno, a lo más el límite de calendario',
  'derivation.rule.calendar': 'a lo más el límite de calendario',
  'derivation.rule.inside-window': 'lo deseado, movido dentro de la ventana',
  'derivation.rule.lower': 'el límite inferior de lo previsto',
  'derivation.rule.upper': 'el límite superior de lo previsto',
  'derivation.rule.reading': 'mediana de las repeticiones',
  'program.leak-cost': '{day} al día se van al drenaje en servicio, {year} al año; un día cuesta {cost}.',
  'program.found-brine-left':
    '{left} de salmuera quedan cada vez, así que el nivel del tanque de salmuera sube hasta que se derrama o el flotador lo detiene.',
  'program.once.much-brine-brine':
    'Una vez: hay {brine} de salmuera en el tanque, {standing} de sal donde se quieren {wanted}. Ponga el paso de salmuera en {step} para la primera regeneración, para succionarla y enjuagarla toda, y regréselo después; o saque antes el sobrante con bomba.',
  'program.once.much-brine-draw':
    'Una vez: hay {brine} de salmuera en el tanque, {standing} de sal donde se quieren {wanted}. Ponga la succión de salmuera en {step} para la primera regeneración, para succionarla toda, y regrésela después; o saque antes el sobrante con bomba.',
  'program.once.pump-out':
    'Una vez: hay {brine} de salmuera en el tanque, {standing} de sal donde se quieren {wanted}, y ningún paso de este control alcanza para succionarla y enjuagarla toda. Saque el sobrante con bomba antes de la primera regeneración.',
  'program.once.then-usual':
    'Esa succión fuerte ayuda al lecho agotado; regenere una vez más con los ajustes nuevos.',
  'program.once.exhausted-twice':
    'Una vez: el lecho está agotado y una dosis normal no lo recupera. Regenere dos veces seguidas, con dos a cuatro horas entre ambas para que la salmuera tome fuerza.',
  'program.once.exhausted-twice-water':
    'Una vez: el lecho está agotado y una dosis normal no lo recupera. Agregue {more} de agua al tanque de salmuera, espere de dos a cuatro horas y regenere; espere otro tanto tras el llenado y regenere una vez más.',
  'program.once.exhausted-heavy-brine':
    'O una vez, fuerte: agregue {more} de agua para disolver {salt} de sal, espere de dos a cuatro horas, ponga el paso de salmuera en {step} para esa regeneración y regréselo después.',
  'program.once.exhausted-heavy-draw':
    'O una vez, fuerte: agregue {more} de agua para disolver {salt} de sal, espere de dos a cuatro horas, ponga la succión en {step} para esa regeneración y regrésela después.',
  'derivation.rule.as-advised': 'nadie lo leyó; se toma lo recomendado',
  'derivation.rule.override': 'el límite de calendario, en días que admite el control',
} as const satisfies Translation<typeof programEn>;
