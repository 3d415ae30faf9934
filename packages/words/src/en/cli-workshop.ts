/** What the commands around the workshop server say: serve, migrate, backup, restore. */
export const cliWorkshopEn = {
  'cli.serve.port': '--port {value} is no port. Write a number from 0 to 65534; 0 takes any that is free.',
  'cli.serve.with-lan': '{option} goes with --lan only.',
  'cli.serve.both-files': '--certificate and --key go together.',
  'cli.serve.proxy-or-files': '--behind-proxy does not go with --certificate: the proxy has the certificate.',
  'cli.serve.network': 'Devices in the network: {urls}',
  'cli.serve.fingerprint': 'SHA-256 fingerprint of the certificate: {fingerprint}',
  'cli.serve.code': 'Code to let one device in, good once, for ten minutes: {code}',
  'cli.serve.begin-first': 'A workshop has to be begun at {url} before a device can join.',
  'cli.serve.cannot-listen': 'Listening on {where} failed: {why}.',
  'cli.serve.cannot-listen.mend': 'Give another address with --host or another port with --port.',
  'cli.serve.certificate': 'The certificate or its key cannot be used: {why}.',
  'cli.serve.certificate.mend':
    'Both are needed in PEM, the key without a password and made for this certificate.',
  'cli.migrate.done': '{where} has the form of this version.',
  'cli.backup.done':
    '{file}: {entries, plural, one {one entry} other {# entries}}, {files, plural, one {one file} other {# files}}.',
  'cli.backup.spoiled':
    'Damaged and left out: {count, plural, one {one file} other {# files}}. These are not what their names say: {hashes}.',
  'cli.backup.spoiled.mend':
    'A device that still holds them sends them again once they are removed from the files folder.',
  'cli.restore.done':
    'In place: {entries, plural, one {one entry} other {# entries}}, {files, plural, one {one file} other {# files}}. What the backup lacks, devices send again.',
  'cli.restore.aside': 'What was there before is kept: {aside}.',
  'cli.restore.bad': '{file} was not restored, since it has faults. The data were not touched.',
  'cli.restore.bad.mend': 'Restore an older backup, or copy this one again from where it was kept.',
  'cli.restore.bad.missing': 'There is no such file.',
  'cli.restore.bad.damaged': 'It is damaged: {detail}.',
  'cli.restore.bad.not-a-backup': 'It is no backup of this program.',
  'cli.restore.bad.newer': 'A newer version of this program wrote it ({detail}).',
  'cli.restore.bad.rows': 'Rows of the table {table} were changed or are missing.',
  'cli.restore.bad.entry': 'The entry at place {position} is not what was written ({id}).',
  'cli.restore.bad.place': 'There is no entry at place {position}.',
  'cli.restore.bad.file': 'A file is not what its name says ({hash}).',
  'cli.restore.bad.more': '{count, plural, one {And one more.} other {And # more.}}',
  'cli.fault.locked': 'Another program has {where} open for writing; only one may.',
  'cli.fault.locked.mend': 'End the other one first, or name another file with --data.',
  'cli.fault.wrecked': '{where} is damaged or empty. Nothing in it was changed.',
  'cli.fault.wrecked.mend':
    'Put the last backup in its place with “brinewright restore FILE”; what is there is kept aside.',
  'cli.fault.no-database': '{where} is no database. Nothing in it was changed.',
  'cli.fault.no-database.mend':
    'Name the right file with --data, or put the last backup in its place with “brinewright restore FILE”.',
  'cli.fault.not-ours': '{where} is a database of another program. Nothing in it was changed.',
  'cli.fault.not-ours.mend': 'Name another file with --data, or another database with DATABASE_URL.',
  'cli.fault.newer': '{where} was written by a newer version of this program. Nothing in it was changed.',
  'cli.fault.newer.mend': 'Start it with that version, or a newer one.',
  'cli.fault.not-migrated': '{where} has the form of an older version.',
  'cli.fault.not-migrated.mend':
    'Run “brinewright migrate” as the owner of the tables; --role names the role of the server.',
  'cli.fault.store-away': 'The database {where} does not answer. Nothing was changed.',
  'cli.fault.store-away.mend': 'Start it, or check DATABASE_URL and the network; then try again.',
  'cli.fault.full': 'There is no room left for {where}. Nothing was half-written.',
  'cli.fault.full.mend': 'Make room on that disk and try again.',
  'cli.fault.not-allowed': '{where} may not be read or written by this user.',
  'cli.fault.not-allowed.mend': 'Give the rights for it and its folder, or name another place.',
  'cli.fault.exists': '{where} is there already and was not written over.',
  'cli.fault.exists.mend': 'Name another file.',
  'cli.fault.nothing-here': 'No workshop has been begun in {where}.',
  'cli.fault.nothing-here.mend':
    'Name the file of the workshop with --data, or begin one with “brinewright serve”.',
  'cli.fault.other-workshop':
    'The workshop in {where} is another one than that of the backup. Nothing was changed.',
  'cli.fault.other-workshop.mend':
    'Name another file with --data to restore it beside the one that is there.',
  'cli.fault.disk': 'The disk refuses to read or write {where}.',
  'cli.fault.disk.mend': 'Copy what can be read to another disk, and restore the last backup there.',
} as const satisfies Record<string, string>;
