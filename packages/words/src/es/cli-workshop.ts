import type { cliWorkshopEn } from '../en/cli-workshop.ts';
import type { Translation } from '../translation.ts';

export const cliWorkshopEs = {
  'cli.serve.port':
    '--port {value} no es un puerto. Se escribe un número de 0 a 65534; 0 toma cualquiera que esté libre.',
  'cli.serve.with-lan': '{option} va solo con --lan.',
  'cli.serve.both-files': '--certificate y --key van juntos.',
  'cli.serve.proxy-or-files': '--behind-proxy no va con --certificate: el certificado lo tiene el proxy.',
  'cli.serve.network': 'Equipos de la red: {urls}',
  'cli.serve.fingerprint': 'Huella SHA-256 del certificado: {fingerprint}',
  'cli.serve.code': 'Código para dar entrada a un equipo, vale una vez, durante diez minutos: {code}',
  'cli.serve.begin-first': 'Hay que iniciar un taller en {url} antes de que un equipo pueda unirse.',
  'cli.serve.cannot-listen': 'No se pudo atender en {where}: {why}.',
  'cli.serve.cannot-listen.mend': 'Dar otra dirección con --host u otro puerto con --port.',
  'cli.serve.certificate': 'El certificado o su llave no se pueden usar: {why}.',
  'cli.serve.certificate.mend':
    'Los dos se necesitan en PEM, la llave sin contraseña y hecha para ese certificado.',
  'cli.migrate.done': '{where} tiene la forma de esta versión.',
  'cli.backup.done':
    '{file}: {entries, plural, one {una anotación} other {# anotaciones}}, {files, plural, one {un archivo} other {# archivos}}.',
  'cli.backup.spoiled':
    'Dañados y omitidos: {count, plural, one {un archivo} other {# archivos}}. No son lo que dicen sus nombres: {hashes}.',
  'cli.backup.spoiled.mend':
    'Un equipo que aún los tenga los envía de nuevo cuando se quiten de la carpeta de archivos.',
  'cli.restore.done':
    'En su lugar: {entries, plural, one {una anotación} other {# anotaciones}}, {files, plural, one {un archivo} other {# archivos}}. Lo que le falta al respaldo lo envían de nuevo los equipos.',
  'cli.restore.aside': 'Lo que había antes se guardó: {aside}.',
  'cli.restore.bad': '{file} no se restauró porque tiene fallas. Los datos no se tocaron.',
  'cli.restore.bad.mend': 'Restaurar un respaldo anterior, o copiar este de nuevo de donde se guardó.',
  'cli.restore.bad.missing': 'No existe ese archivo.',
  'cli.restore.bad.damaged': 'Está dañado: {detail}.',
  'cli.restore.bad.not-a-backup': 'No es un respaldo de este programa.',
  'cli.restore.bad.newer': 'Lo escribió una versión más nueva de este programa ({detail}).',
  'cli.restore.bad.rows': 'Filas de la tabla {table} se cambiaron o faltan.',
  'cli.restore.bad.entry': 'La anotación en el lugar {position} no es la que se escribió ({id}).',
  'cli.restore.bad.place': 'No hay anotación en el lugar {position}.',
  'cli.restore.bad.file': 'Un archivo no es lo que dice su nombre ({hash}).',
  'cli.restore.bad.more': '{count, plural, one {Y una más.} other {Y # más.}}',
  'cli.fault.locked': 'Otro programa tiene abierto {where} para escribir; solo uno puede.',
  'cli.fault.locked.mend': 'Cerrar primero el otro, o indicar otro archivo con --data.',
  'cli.fault.wrecked': '{where} está dañado o vacío. No se cambió nada en él.',
  'cli.fault.wrecked.mend':
    'Poner el último respaldo en su lugar con “brinewright restore FILE”; lo que hay se guarda aparte.',
  'cli.fault.no-database': '{where} no es una base de datos. No se cambió nada en él.',
  'cli.fault.no-database.mend':
    'Indicar el archivo correcto con --data, o poner el último respaldo en su lugar con “brinewright restore FILE”.',
  'cli.fault.not-ours': '{where} es una base de datos de otro programa. No se cambió nada en ella.',
  'cli.fault.not-ours.mend': 'Indicar otro archivo con --data, u otra base de datos con DATABASE_URL.',
  'cli.fault.newer': '{where} lo escribió una versión más nueva de este programa. No se cambió nada.',
  'cli.fault.newer.mend': 'Iniciarlo con esa versión, o con una más nueva.',
  'cli.fault.not-migrated': '{where} tiene la forma de una versión anterior.',
  'cli.fault.not-migrated.mend':
    'Ejecutar “brinewright migrate” como dueño de las tablas; --role indica el rol del servidor.',
  'cli.fault.store-away': 'La base de datos {where} no responde. No se cambió nada.',
  'cli.fault.store-away.mend': 'Iniciarla, o revisar DATABASE_URL y la red; luego intentar de nuevo.',
  'cli.fault.full': 'No queda espacio para {where}. Nada quedó a medias.',
  'cli.fault.full.mend': 'Liberar espacio en ese disco e intentar de nuevo.',
  'cli.fault.not-allowed': 'Este usuario no puede leer o escribir {where}.',
  'cli.fault.not-allowed.mend': 'Dar permisos sobre él y su carpeta, o indicar otro lugar.',
  'cli.fault.exists': '{where} ya existe y no se sobrescribió.',
  'cli.fault.exists.mend': 'Indicar otro archivo.',
  'cli.fault.nothing-here': 'No se ha iniciado ningún taller en {where}.',
  'cli.fault.nothing-here.mend':
    'Indicar el archivo del taller con --data, o iniciar uno con “brinewright serve”.',
  'cli.fault.other-workshop': 'El taller en {where} no es el del respaldo. No se cambió nada.',
  'cli.fault.other-workshop.mend': 'Indicar otro archivo con --data para restaurarlo junto al que hay.',
  'cli.fault.disk': 'El disco se niega a leer o escribir {where}.',
  'cli.fault.disk.mend': 'Copiar a otro disco lo que se pueda leer, y restaurar allí el último respaldo.',
} as const satisfies Translation<typeof cliWorkshopEn>;
