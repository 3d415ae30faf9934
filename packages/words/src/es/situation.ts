import type { situationEn } from '../en/situation.ts';
import type { Translation } from '../translation.ts';

export const situationEs = {
  'situation.gap.situation': 'Primero hay que saber de qué equipo se trata.',
  'situation.gap.water':
    'No hay análisis del agua cruda. Mida dureza y hierro en una llave fría antes del equipo.',
  'situation.gap.hardness':
    'No se conoce la dureza del agua cruda. Una titulación por gotas toma cinco minutos.',
  'situation.gap.tank': 'No se conoce el tamaño del tanque. Mida el contorno con cinta.',
  'situation.gap.bed':
    'No se conoce el volumen del lecho. Mida el contorno con cinta y la profundidad con varilla.',
  'situation.gap.free':
    'No se conoce la altura libre sobre el lecho. Sin ella nadie puede decir cuánto puede subir.',
  'situation.gap.rate.backwash':
    'No se conoce el flujo de retrolavado. Mida con cubeta y reloj en el drenaje, o lea el control de drenaje.',
  'situation.gap.rate.draw':
    'No se conoce la succión de salmuera. Ponga la línea en una cubeta con agua y tome el tiempo.',
  'situation.gap.rate.slow-rinse':
    'No se conoce el flujo de enjuague lento. Mida en el drenaje cuando la válvula de aire haya cerrado.',
  'situation.gap.rate.refill':
    'No se conoce el flujo de llenado. Mida con cubeta al final de la línea de salmuera.',
  'situation.gap.demand':
    'No se conoce el consumo diario. Lea el medidor dos días. Sin él, el programa da solo volumen.',
  'situation.gap.controller': 'No se conoce el control, así que los tiempos se dan por paso.',
  'situation.no-subject': 'La visita trata de “{subject}” y ningún equipo tiene ese id.',
  'situation.no-subject-mend': 'Escriba uno de estos en “subject”: {ids}.',
  'situation.unknown-family': 'No hay definición cargada para la familia “{family}”.',
  'situation.unknown-family-mend':
    'Escriba una de {families}, cargue su definición con --equipment, o escriba “undescribed” y los flujos medidos.',
  'situation.unknown-id': 'Las definiciones no conocen “{id}”. Se conserva y no se usa.',
  'situation.unknown-id-mend': 'Escriba uno de estos: {known}.',
  'situation.unknown-id-none': 'Compárelo con la lista de “equipment show”.',
  'situation.unknown-unit': 'La visita no tiene el equipo “{id}”. El dato se conserva y no se usa.',
  'situation.unit-twice': 'Dos equipos tienen el id “{id}”. Se usa el primero.',
  'situation.unit-twice-mend': 'Dé a cada equipo un id propio.',
  'situation.dose-twice': 'Se decidió una dosis dos veces: se usa la última, {used}, y no {written}.',
  'situation.dose-twice-mend': 'Quite la dosis que no vale.',
  'situation.proof.unknown':
    'Este equipo no tiene la comprobación “{check}”. La lectura se conserva y no se usa.',
  'situation.proof.no-value': '“{check}” se mide, y un estado no dice nada de ello.',
  'situation.proof.no-value-mend': 'Escriba en “value” lo leído, con su unidad, y sin “state”.',
  'situation.proof.no-state': '“{check}” se ve o no se ve, y un valor no dice nada de ello.',
  'situation.proof.no-state-mend': 'Escriba “state: seen” o “state: not-seen”, y sin “value”.',
  'situation.no-time-of-day': '“{at}” no es una hora del día. Se conserva y no se usa.',
  'situation.no-time-of-day-mend': 'Escriba horas y minutos de 00:00 a 23:59, por ejemplo 02:00.',
  'situation.seasons-swapped':
    'El agua más fría, {coldest}, se indicó más caliente que la más caliente, {warmest}. La menor se toma como la más fría.',
  'situation.seasons-swapped-mend': 'Intercambie “coldest” y “warmest”, o corrija la que esté mal.',
  'situation.temperature-outside':
    'El agua estaba a {measured}, fuera de {coldest} a {warmest}, lo indicado para el año. Se usan los valores indicados.',
  'situation.temperature-outside-mend':
    'Mida otra vez, o pregunte otra vez por el agua más fría y la más caliente.',
  'situation.reading.odd': '{test}: {value} está fuera de lo que da un equipo así ({min} a {max}).',
  'situation.reading.odd-unit': '¿Eran {number} {unit}? Escriba la unidad o lea otra vez.',
  'situation.reading.odd-again': 'Lea otra vez, o escriba cómo se leyó.',
  'situation.reading.unknown-test':
    'Las definiciones no tienen la prueba “{test}”. La lectura se conserva y no se usa.',
  'situation.reading.unknown-test-mend': '“equipment show” lista las pruebas.',
  'situation.reading.unknown-state': '“{test}” no tiene el resultado “{state}”.',
  'situation.reading.unknown-state-mend': 'Escriba uno de estos: {states}, o cannot-do.',
  'situation.reading.wild':
    '{what}: {wild, plural, one {# de {repeats} lecturas está lejos de las otras y casi no cuenta.} other {# de {repeats} lecturas están lejos de las otras y casi no cuentan.}}',
  'situation.reading.wild-mend': 'Lea una vez más; con pocas lecturas la rara puede ser la verdadera.',
  'situation.rate-set-aside':
    '{step} se leyó en {read}, lejos de los {chart} de lo instalado. Habla de una falla; el programa va por lo instalado.',
  'situation.rate-set-aside-mend': 'Lea otra vez cuando la falla esté reparada.',
  'situation.gap.age':
    'No se conoce la edad de la resina; se toma como nueva. Cada año cuesta cerca de 5 % de su capacidad.',
  'situation.gap.seasons':
    'No se conocen el agua más fría y la más caliente del año; se toma un margen angosto alrededor de una lectura. Deciden el retrolavado.',
  'situation.water.fine': 'bien',
  'situation.water.odd': 'raro',
  'situation.water.questionable': 'dudoso',
  'situation.water.charge-balance': 'El análisis es {verdict}: sus cargas difieren en {balance}.',
  'situation.water.hardness':
    'El análisis es {verdict}: calcio y magnesio dan {hardness}, el laboratorio dice otra cosa.',
  'situation.water.conductivity':
    'El análisis es {verdict}: sus iones dan {conductivity}, que no concuerda con la conductividad medida.',
  'situation.water.doubt-mend': 'Titule la dureza en sitio antes de basar los ajustes en ella.',
  'situation.chart-ends':
    'El suministro tiene {pressure} y la tabla del inyector termina en {least} y {most}; se usa su valor extremo.',
  'situation.chart-ends-mend': 'Mida la succión con cubeta: un flujo medido vale más que la tabla.',
  'derivation.below-range': '{equation}: {what} {value} está debajo de {limit}, lo menor con que se probó.',
  'derivation.above-range': '{equation}: {what} {value} está arriba de {limit}, lo mayor con que se probó.',
  'derivation.cannot-compute': '“{equation}” no se puede calcular con estos valores.',
  'derivation.cannot-compute.mend': 'Revise sus entradas: una es cero o se contradicen.',
  'derivation.rule.mean': 'promedio de los dos',
  'derivation.rule.same-drain-control': 'el control de drenaje fija ambos',
  'derivation.rule.pail-calibration': 'movido solo lo que exige la cubeta del drenaje, entre 0.45 y 0.75 mm',
} as const satisfies Translation<typeof situationEn>;
