import type { shopWords as pattern } from '../../en/problems/shop.ts'
import type { Table } from '../../table.ts'

const addressFaults = {
  unreadable: 'no es una dirección',
  scheme: 'no empieza por postgres://',
  host: 'no nombra ningún servidor',
  user: 'no nombra ningún usuario, como «bench» en postgres://bench@server/database',
  database: 'no nombra ninguna base de datos al final',
  shop: 'el nombre del taller solo admite minúsculas, cifras y _, y empieza por una letra',
}

const certificateFaults = {
  untrusted: 'no lo emitió ninguna autoridad conocida aquí',
  'other-name': 'se emitió para otro nombre',
  expired: 'ha caducado o todavía no es válido',
}

const passwordFileFaults = {
  open: 'lo pueden leer otros usuarios. Quitarles los permisos (chmod 600) y dar al rol una contraseña nueva',
  unreadable: 'no se puede leer. Dar permiso de lectura a este usuario y a ningún otro',
}

export const shopWords: Table<typeof pattern> = {
  'shop-address-wrong': ({ fault }) =>
    `La dirección del archivo del taller no sirve: ${addressFaults[fault]}. Escribirla tal como se indicó al instalar el archivo.`,
  'shop-host-unknown': ({ host }) =>
    `No se conoce ningún servidor llamado ${host}. Comprobar que está bien escrito y que la red está conectada.`,
  'shop-unreachable': ({ host, code }) =>
    `El archivo del taller en ${host} no responde (${code}). Lo confirmado aquí está guardado y se enviará cuando vuelva a responder. ¿Está encendido el servidor y conectada la red?`,
  'shop-password-missing': ({ user }) =>
    `El archivo pide una contraseña para ${user} y aquí no hay ninguna. Escribirla en la página «Taller», o darla en PGPASSWORD.`,
  'shop-password-wrong': ({ user, host }) =>
    `El archivo en ${host} no acepta la contraseña de ${user}, o no conoce a ese usuario. Escribir la contraseña tal como se indicó al instalar el archivo.`,
  'shop-not-let-in': ({ user, host }) =>
    `El servidor ${host} no deja entrar a ${user} desde este equipo. Hacer añadir una línea en su pg_hba.conf.`,
  'shop-tls-missing': ({ host }) =>
    `El servidor ${host} no cifra, así que no se envió nada, tampoco la contraseña. Hacer activar TLS en él.`,
  'shop-certificate': ({ host, fault }) =>
    `El certificado del servidor ${host} ${certificateFaults[fault]}, así que no se envió nada, tampoco la contraseña. Dar el fichero de la autoridad que lo emitió, o hacer corregir el certificado.`,
  'shop-authority-unreadable': ({ file }) =>
    `El fichero de la autoridad, ${file}, no se puede leer o no contiene ningún certificado en PEM. Elegirlo de nuevo.`,
  'shop-password-file': ({ file, fault }) =>
    `El fichero con la contraseña, ${file}, ${passwordFileFaults[fault]}.`,
  'shop-server-old': ({ host, version, least }) =>
    `El servidor ${host} es PostgreSQL ${version}; el archivo del taller necesita ${least} o posterior. Hacer instalar uno más nuevo.`,
  'shop-database-missing': ({ database }) =>
    `El servidor no tiene ninguna base de datos ${database}. Comprobar que está bien escrita, o hacerla crear.`,
  'shop-database-foreign': ({ database, shop }) =>
    `En la base de datos ${database}, el esquema ${shop} es de otro programa. Ha quedado como estaba. Instalar el archivo con otro nombre.`,
  'shop-name-taken': ({ shop }) =>
    `Otra base de datos de este servidor tiene ya un taller ${shop}, y sus roles entrarían también aquí. Instalar este con otro nombre: añadir ?shop=NOMBRE a la dirección.`,
  'shop-not-set-up': ({ database, shop }) =>
    `La base de datos ${database} no tiene archivo del taller ${shop}, o este usuario no puede verlo. Hacer que su propietario lo instale con: npm run shop -- init`,
  'shop-schema-newer': ({ shop, version, known }) =>
    `El archivo de ${shop} lo hizo un Bedplate más nuevo (versión ${version} de sus tablas; este conoce la ${known}). No se ha cambiado nada. Lo confirmado aquí espera a que este programa sea el más nuevo.`,
  'shop-schema-older': ({ shop, version, known }) =>
    `El archivo de ${shop} tiene la versión ${version} de sus tablas y este programa necesita la ${known}. Hacer que su propietario ejecute: npm run shop -- migrate`,
  'shop-not-allowed': ({ user }) =>
    `El archivo no permite eso a ${user}. El rol de lectura no envía nada, y el archivo solo se instala con el rol del propietario.`,
  'shop-full': ({ host }) =>
    `El disco del archivo en ${host} está lleno. Lo confirmado aquí está guardado y se enviará cuando haya sitio. Hacer liberar espacio en el servidor.`,
  'shop-crowded': ({ host }) =>
    `El servidor ${host} no tiene ninguna conexión libre para este banco. Se intentará de nuevo. Si sigue así, hacer aumentar max_connections en él.`,
  'shop-server-fault': ({ host, code }) =>
    `El archivo en ${host} no pudo hacerlo y no guardó nada de ello (SQLSTATE ${code}). Se intentará de nuevo. Si sigue así, hacer mirar el registro del servidor.`,
  'shop-answer-unreadable': ({ host }) =>
    `Lo que respondió el archivo en ${host} no se puede leer y no se ha tomado nada de ello. Lo confirmado aquí se conserva. ¿Es la dirección del archivo y no la de otro servidor? Si lo es, pedir a su propietario que lo mire.`,
  'shop-build-altered': ({ name, entry }) =>
    `Lo que el archivo tiene de ${name} no está como se confirmó: la entrada ${entry} se alteró o no sigue a la anterior. No se ha tomado nada de ello. Pedir al propietario del archivo que lo mire y verificar el montaje en el banco que lo registró.`,
  'shop-spec-missing': () =>
    'El archivo no ha recibido la ficha en que se basa este montaje y no ha tomado ninguna entrada. La ficha se envía primero.',
  'shop-entry-refused': ({ entry }) =>
    `El archivo no ha tomado la entrada ${entry}: no sigue a la anterior, o no está como se confirmó. Verificar el registro de aquí.`,
  'shop-fork-unknown': () =>
    'Esa bifurcación no está en el archivo, o ya se resolvió. Mirar la lista de nuevo.',
}
