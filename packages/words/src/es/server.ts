import type { serverEn } from '../en/server.ts';
import type { Translation } from '../translation.ts';

export const serverEs = {
  'server.skip': 'Al contenido',
  'server.language': 'Idioma',
  'server.units': 'Unidades',
  'server.units.us': 'EE. UU.',
  'server.units.metric': 'métricas',
  'server.go-on': 'Seguir',
  'server.to-start': 'A la página de inicio',

  'server.start': 'Inicio',
  'server.start.at': 'Taller en esta computadora',
  'server.app.open': 'Abrir la aplicación de campo',
  'server.app.open.what': 'Guía por la visita y funciona sin red.',

  'server.door.own': 'El propio',
  'server.door.begin': 'Abrir un taller',
  'server.door.begin.what':
    'Un registro vacío en esta computadora. Pide un nombre una sola vez y no necesita cuenta ni red.',
  'server.door.begin.do': 'Abrir el propio',
  'server.door.own.what':
    '{visits, plural, =0 {Todavía sin visitas.} one {Una visita en el registro.} other {# visitas en el registro.}}',
  'server.door.own.do': 'Entrar al taller',
  'server.door.demo': 'La muestra',
  'server.door.demo.what':
    '{visits, plural, one {Una visita} other {# visitas}} para mirar, desde la primera queja hasta el reporte. La copia se hace de nuevo en cada arranque; se puede probar todo en ella.',
  'server.door.demo.do': 'Ver la muestra',
  'server.demo.title': 'La muestra, toda inventada',
  'server.demo.invented':
    'Los sitios, las personas, las empresas, las válvulas y los precios son inventados. Los análisis de agua son reales y no tienen que ver con los sitios.',
  'server.demo.company': 'Thornbeck Water Care (inventada)',

  'server.devices': 'Teléfonos y otras computadoras',
  'server.devices.none': 'Ninguno se ha unido.',
  'server.device.paired': 'Unido {when}.',
  'server.device.seen': 'Visto por última vez {when}.',
  'server.device.revoke': 'Ya no dejarlo entrar',
  'server.device.revoked': 'No entra desde {when}. Lo que tiene se queda en él.',
  'server.lan.off':
    'Un teléfono puede unirse cuando este programa se arranca para la red. Ciérrelo con Ctrl C y arránquelo así:',
  'server.lan.begin-first': 'Abra primero un taller; después se le puede unir un teléfono.',
  'server.join': 'Unir un dispositivo',
  'server.join.open': 'En el teléfono, en la misma red, abra esta dirección:',
  'server.join.trust':
    'El teléfono no conoce esta computadora y avisa. Instale el certificado desde la misma dirección:',
  'server.join.compare': 'Antes de confiar en él, compare su huella SHA-256 con esta:',
  'server.join.code': 'Escriba allí este código:',
  'server.join.no-code': 'No hay código vigente.',
  'server.join.until': 'Sirve una vez, hasta {when}.',
  'server.join.draw': 'Sacar un código nuevo',

  'server.record': 'Dónde está el registro',
  'server.record.place': 'Registro',
  'server.record.backup': 'Respaldo',
  'server.record.hint':
    'El respaldo puede hacerse mientras esto funciona. Guárdelo en otro disco: lo que está en este se pierde con él.',

  'server.begin': 'Abrir un taller',
  'server.begin.what': 'Todo lo que se anota en esta computadora lleva su nombre.',
  'server.begin.author': 'Su nombre',
  'server.begin.name': 'Nombre del taller',
  'server.begin.name.note': 'se puede omitir',
  'server.begin.do': 'Abrir el taller',
  'server.begin.usual-name': 'Taller de {author}',

  'server.pair': 'Unirse a un taller',
  'server.pair.at': 'Un dispositivo que aquí no se conoce',
  'server.pair.what':
    'El dueño encuentra un código en la página de inicio de la computadora del taller. Sirve una vez, durante diez minutos.',
  'server.pair.code': 'Código',
  'server.pair.name': 'De quién es este dispositivo',
  'server.pair.name.note': 'por ejemplo: Inés, teléfono',
  'server.pair.do': 'Unirse',

  'server.cell.entries': 'Registro',
  'server.cell.entries.on-disk': '{entries, plural, one {un registro} other {# registros}} en disco',
  'server.cell.definitions': 'Definiciones',
  'server.cell.definitions.count': '{families, plural, one {una familia} other {# familias}}',

  'server.visits': 'Visitas',
  'server.visits.none': 'Todavía no hay visitas',
  'server.visits.none.do':
    'Traiga abajo una visita escrita, o una un teléfono y anote una en él. Los archivos de la muestra enseñan cómo se escribe una visita.',
  'server.site.unknown': 'Sitio todavía desconocido',
  'server.visit.one': 'Visita',
  'server.visit.open': 'abierta',
  'server.visit.handed-over': 'entregada',
  'server.paper.report': 'Reporte',
  'server.paper.sheet': 'Hoja de trabajo',
  'server.paper.card': 'Tarjeta para dejarlo seguro',
  'server.paper.cutaway': 'Corte',
  'server.unit.history': 'Este equipo hasta ahora',
  'server.unit.no-visits': 'No hay visitas a este equipo en el registro.',

  'server.bring': 'Traer',
  'server.bring.visit': 'Una visita escrita',
  'server.bring.visit.do': 'Agregar la visita',
  'server.bring.visit.taken': 'La visita está en el registro',
  'server.bring.definition': 'Una definición de familia, de base o de medios',
  'server.bring.definition.do': 'Agregar la definición',
  'server.bring.definition.taken': 'La definición está en uso',
  'server.definitions.own': 'Definiciones propias en uso: {names}.',
  'server.definitions.missing':
    'Estas definiciones están en el registro y sus archivos todavía no llegan: {names}.',
  'server.definitions.left-out':
    'Las definiciones propias quedan fuera, porque junto con las incluidas tienen fallas. Corríjalas y agréguelas de nuevo.',
  'server.take': 'Llevar',
  'server.take.all': 'Todos los registros, en un archivo',
  'server.take.tables': 'Tablas para una hoja de cálculo',
  'server.table.sites': 'Sitios',
  'server.table.units': 'Equipos',
  'server.table.visits': 'Visitas',
  'server.table.answers': 'Respuestas a las señas',
  'server.table.readings': 'Lecturas',
  'server.table.settings': 'Ajustes',
  'server.table.operations': 'Operaciones hechas',
  'server.table.parts-used': 'Piezas usadas',
  'server.table.proofs': 'Lecturas de comprobación',
  'server.table.stock': 'Existencias',
  'server.table.entries': 'Registros',

  'server.visit.facts': 'La visita',
  'server.visit.date': 'Fecha',
  'server.visit.by': 'Hecha por',
  'server.visit.state': 'Estado',
  'server.visit.started': 'Empezada',
  'server.visit.last': 'Último registro',
  'server.visit.count': 'Registros',
  'server.visit.holds': 'Qué contiene',
  'server.visit.more': 'Más',
  'server.visit.entries': 'Quién anotó qué',
  'server.visit.yaml': 'La visita como documento',
  'server.visit.assessment': 'La evaluación como datos',
  'server.visit.other-definitions':
    'Esta visita se anotó con otras definiciones que las que están en uso. Sus papeles se calculan con las que están en uso.',
  'server.visit.gone': 'Desde que cambiaron las definiciones, esto ya no tiene lugar: {what}.',
  'server.visit.shown-then':
    'Al entregar se guardaron cifras, calculadas por {engine}. Los papeles de ahora se calculan de nuevo.',
  'server.holds.answers': 'Respuestas',
  'server.holds.readings': 'Lecturas',
  'server.holds.operations': 'Operaciones hechas',
  'server.holds.parts': 'Piezas usadas',
  'server.holds.found': 'Ajustes hallados',
  'server.holds.set': 'Ajustes puestos',
  'server.holds.proofs': 'Lecturas de comprobación',
  'server.holds.photos': 'Fotos',
  'server.holds.nothing': 'Nada más que su comienzo.',
  'server.entry.redacted': 'contenido quitado por el dueño',
  'server.about.unit': 'equipo {unit}',
  'server.about.visit': 'visita {visit}',
  'server.said': 'por {author}, {when}',
  'server.said.clock': '(el reloj del dispositivo estaba mal por {minutes} min)',
  'server.withdrawn': 'retirado',

  'server.remarks': 'Por revisar',
  'server.remarks.count': '{remarks, plural, one {Una cosa} other {# cosas}} por revisar',
  'server.remarks.at': 'En {site}: {remarks}',
  'server.remarks.own': 'El taller mismo: {remarks}',
  'server.remarks.own.title': 'El taller mismo',
  'server.remarks.none': 'Nada se contradice y nada espera.',
  'server.rivals': 'Valores que se contradicen',
  'server.rivals.what':
    'Dos personas anotaron valores distintos sin saber una de la otra. Los dos están en el registro; el que se elige se anota de nuevo, y ese vale.',
  'server.rivals.in-force': 'vale ahora',
  'server.rivals.do': 'Que valga el elegido',
  'server.rivals.elsewhere': 'Esto se resuelve anotándolo de nuevo en un dispositivo.',
  'server.set-aside': 'Apartados',
  'server.set-aside.what': 'Estos registros no contienen lo que pide su clase. Se guardan y no se usan.',
  'server.waiting': 'En espera',
  'server.waiting.what': 'Estos registros necesitan otro que todavía no llega.',
  'server.waiting.for': 'Espera a {what}.',
  'server.newer': 'De una versión más nueva',
  'server.newer.what':
    'Estos registros los escribió una versión más nueva del programa. Se guardan, se pasan y aquí no se usan.',

  'server.cut.valve': 'Válvula',
  'server.cut.stop': 'Posición',
  'server.cut.at.service': 'En la posición de servicio',
  'server.cut.at.backwash': 'En la posición de retrolavado',
  'server.cut.at.brine': 'En la posición de salmuera',
  'server.cut.at.fast-rinse': 'En la posición de enjuague rápido',
  'server.cut.at.refill': 'En la posición de llenado',
  'server.cut.shows': 'Qué muestra',
  'server.cut.torn': 'Romper un sello y ver',
  'server.cut.sound': 'ninguno',
  'server.cut.seal': 'Sello {seal}',
  'server.cut.likely': 'Por lo hallado, es probable que el sello {seal} esté roto.',
  'server.cut.none': 'No hay dibujo: la definición de este equipo no describe el interior de la válvula.',

  'server.issue.place': '{file}, línea {line}',
  'server.port-taken': 'El puerto {port} está ocupado; se toma el {other}.',

  'server.problem.number': 'Problema {status}',
  'server.problem.malformed-json': 'Esto no es JSON',
  'server.problem.malformed-json.detail':
    'Lo enviado no se pudo leer como JSON. No se tomó nada. Envíelo de nuevo, entero y en UTF-8.',
  'server.problem.malformed-request': 'La petición está rota',
  'server.problem.malformed-request.detail':
    'Terminó antes de tiempo o no sigue las reglas de HTTP. No se tomó nada.',
  'server.problem.invalid': 'El mensaje no corresponde',
  'server.problem.invalid.detail':
    'Es JSON, pero no el mensaje que toma esta dirección. No se tomó nada. Los lugares se nombran abajo; api/openapi.json describe el mensaje.',
  'server.problem.bad-address': 'La dirección está rota',
  'server.problem.bad-address.detail':
    'Contiene caracteres que una dirección no puede tener, o es demasiado larga.',
  'server.problem.not-paired': 'Este dispositivo no puede entrar',
  'server.problem.not-paired.detail':
    'No se ha unido, o ya no se le deja entrar. Lo que tiene se queda en él. El dueño saca un código en la página de inicio de la computadora del taller.',
  'server.problem.owner-only': 'Solo en la computadora del taller',
  'server.problem.owner-only.detail':
    'Esto solo lo puede hacer el dueño, en la computadora donde funciona el taller.',
  'server.problem.wrong-host': 'Pedido con otro nombre',
  'server.problem.wrong-host.detail':
    'Esta computadora responde solo en 127.0.0.1 y localhost, para que ningún sitio web se haga pasar por ella. Ábrala en una de esas.',
  'server.problem.other-origin': 'Enviado desde otro sitio',
  'server.problem.other-origin.detail':
    'Una página de otro sitio quiso escribir aquí. No se tomó nada. Hágalo desde una página de este servidor.',
  'server.problem.wrong-code': 'El código está mal',
  'server.problem.wrong-code.detail':
    'El código no es el vigente. Después de diez intentos fallidos ya no sirve. Compárelo con la página de inicio de la computadora del taller y escríbalo de nuevo.',
  'server.problem.no-code': 'No hay código vigente',
  'server.problem.no-code.detail':
    'Un código sirve una vez, durante diez minutos. Que se saque uno nuevo en la página de inicio de la computadora del taller.',
  'server.problem.not-found': 'No hay nada en esta dirección',
  'server.problem.not-found.detail':
    '{path} no es una página ni parte de la API. La página de inicio lleva a todas.',
  'server.problem.no-such-site': 'No existe ese sitio',
  'server.problem.no-such-site.detail':
    'El registro no tiene el sitio {stream}. Quizá todavía no llega desde el dispositivo donde se anotó.',
  'server.problem.no-such-visit': 'No existe esa visita',
  'server.problem.no-such-visit.detail':
    'Este sitio no tiene la visita {visit}. Quizá todavía no llega desde el dispositivo donde se anotó.',
  'server.problem.no-such-unit': 'No existe ese equipo',
  'server.problem.no-such-unit.detail': 'Este sitio no tiene el equipo {unit}.',
  'server.problem.no-such-file': 'El archivo no está aquí',
  'server.problem.no-such-file.detail':
    'No ha llegado ningún archivo con este SHA-256. Llega con el dispositivo que lo tiene.',
  'server.problem.no-such-table': 'No existe esa tabla',
  'server.problem.no-such-table.detail': 'Se pueden llevar estas tablas: {known}.',
  'server.problem.no-demo': 'Aquí no hay muestra',
  'server.problem.no-demo.detail': 'Este servidor se arrancó sin la muestra. Arránquelo con --demo.',
  'server.problem.wrong-method': 'No se hace así',
  'server.problem.wrong-method.detail': 'En esta dirección no se responde a {method}; sí a {allowed}.',
  'server.problem.not-begun': 'El taller no se ha abierto',
  'server.problem.not-begun.detail': 'Ábralo en la página de inicio, en la computadora donde funciona.',
  'server.problem.begun-already': 'El taller ya se abrió',
  'server.problem.begun-already.detail':
    'Un servidor atiende un taller. Arranque otro con --data y otro archivo.',
  'server.problem.visit-there': 'Esta visita ya está en el registro',
  'server.problem.visit-there.detail':
    '{site} tiene la visita {visit}. No se tomó nada. Una visita nueva necesita su propio id en el documento.',
  'server.problem.not-settled': 'No se resolvió nada',
  'server.problem.not-settled.detail':
    'Estos valores ya no se contradicen, o entretanto se anotó otro. Mire el sitio de nuevo.',
  'server.problem.too-large': 'Demasiado grande',
  'server.problem.too-large.detail': 'En una sola pieza se toman a lo más {limit}. No se tomó nada.',
  'server.problem.wrong-type': 'Hace falta otro tipo',
  'server.problem.wrong-type.detail':
    'Esta dirección no toma lo enviado con ese tipo de contenido. api/openapi.json nombra los que toma.',
  'server.problem.visit-faulty': 'La visita tiene fallas',
  'server.problem.visit-faulty.detail':
    'No se tomó nada de ella. Corrija lo que se nombra abajo y tráigala de nuevo.',
  'server.problem.is-definition': 'Esto es una definición, no una visita',
  'server.problem.is-definition.detail': 'No se tomó nada. Tráigala como definición.',
  'server.problem.definition-faulty': 'La definición tiene fallas',
  'server.problem.definition-faulty.detail':
    'No está en uso. Corrija lo que se nombra abajo y tráigala de nuevo.',
  'server.problem.wrong-hash': 'El archivo no es lo que dice su nombre',
  'server.problem.wrong-hash.detail':
    'Su SHA-256 es otro: cambió o se cortó en el camino. No se guardó nada. Envíelo de nuevo.',
  'server.problem.nothing-sent': 'No se envió nada',
  'server.problem.nothing-sent.detail': 'Elija un archivo y envíelo de nuevo.',
  'server.problem.too-many': 'Demasiados en un minuto',
  'server.problem.too-many.detail': 'Espere un minuto e intente de nuevo.',
  'server.problem.our-mistake': 'Un error del programa',
  'server.problem.our-mistake.detail':
    'Está en la bitácora. Nada se escribió a medias, y lo que está en el registro no se toca.',
  'server.problem.away': 'La base de datos no responde',
  'server.problem.away.detail':
    'Ahora no se puede llegar al registro. No se tomó nada y nada se perdió. Intente de nuevo en unos segundos.',
  'server.problem.full': 'El disco está lleno',
  'server.problem.full.detail':
    'No hubo lugar para lo enviado. Nada se escribió a medias; todo lo confirmado está. Haga lugar y envíelo de nuevo.',
} satisfies Translation<typeof serverEn>;
