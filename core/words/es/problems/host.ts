import type { hostWords as english } from '../../en/problems/host.ts'
import { thingText } from './named-thing.ts'

/** How a record is damaged, where SQLite's own check does not say it. */
const damages = {
  empty: 'está vacío',
  pages: 'sus páginas no encajan',
  disk: 'el disco no lo devuelve entero',
}

const asItWas = 'Se ha dejado como estaba.'

export const hostWords: typeof english = {
  'own-fault': () =>
    'Bedplate ha cometido un error propio y se cierra. Lo confirmado está en el disco. Arrancarlo de nuevo; si no sirve, arrancarlo con --local y avisar a quien lo mantiene.',
  'still-ending': ({ folder }) =>
    `Un Bedplate en ${folder} aún se está cerrando. Esperar a que acabe y arrancar de nuevo.`,
  'host-lost': () =>
    'El programa que sostiene esta ventana se ha cerrado. Lo confirmado está en el disco. Arrancar Bedplate de nuevo para continuar.',
  'host-misunderstood': () =>
    'El programa que sostiene esta ventana ha dado una respuesta que la ventana no conoce. Cerrarla y arrancar Bedplate de nuevo.',
  'program-fault': () =>
    'El programa ha cometido un error propio y no ha cambiado nada. Intentarlo otra vez; si se repite, arrancar Bedplate de nuevo y avisar a quien lo mantiene.',
  'request-unknown': ({ name }) =>
    `El programa no conoce la petición «${name}». Cerrar la ventana y arrancar Bedplate de nuevo.`,
  'request-unreadable': ({ fault }) =>
    `No se ha cambiado nada, porque lo enviado tiene un fallo: ${fault}${fault.endsWith('.') ? '' : '.'} Corregirlo y enviarlo de nuevo.`,
  'text-broken': () =>
    'El texto contiene medio carácter, resto de un pegado defectuoso. Escribirlo de nuevo.',

  'data-folder-closed': ({ folder, why }) =>
    `Bedplate no puede escribir en su carpeta de datos ${folder}. ${closedFolder[why]} O elegir otra carpeta con --data.`,
  'data-folder-is-file': ({ folder }) =>
    `En ${folder} no se pueden guardar montajes: es un fichero, o está dentro de uno, y hace falta una carpeta. Elegir otra con --data.`,
  'record-in-use': ({ folder }) =>
    `Ya hay otro Bedplate en marcha con la carpeta de datos ${folder}. Ir a su ventana, o cerrarlo antes.`,
  'record-newer': ({ file, version, known }) =>
    `El registro ${file} lo hizo un Bedplate más nuevo (versión ${version} de sus tablas; este conoce la ${known}). ${asItWas} Arrancar el programa más nuevo.`,
  'record-of-another-program': ({ file }) =>
    `${file} es una base de datos de otro programa. ${asItWas} Llevarla a otro sitio, o elegir otra carpeta con --data.`,
  'record-not-a-database': ({ file }) =>
    `${file} no es un registro de Bedplate, o su primera página está destruida. ${asItWas} Restaurar una copia de seguridad, o llevar el fichero a otro sitio para empezar de nuevo.`,
  'record-damaged': ({ file, found }) =>
    `El registro ${file} está dañado (${typeof found === 'string' ? damages[found] : found.check}). ${asItWas} Restaurar una copia de seguridad, o hacer examinar una copia del fichero.`,
  'record-schema-altered': ({ file }) =>
    `Algo distinto de Bedplate alteró las tablas del registro ${file}, así que sus protecciones no son fiables. ${asItWas} Restaurar una copia de seguridad.`,
  'record-missing': ({ file }) =>
    `El registro ${file} ya no está, aunque aquí hubo uno. Devolverlo a su sitio, o restaurar una copia de seguridad. Empezar con un registro vacío solo si lo que contenía ya no hace falta.`,
  'record-being-replaced': () => 'Se está restaurando una copia de seguridad. Esperar un momento y repetir.',
  'pdf-by-browser': () =>
    'En una ventana del navegador, el PDF lo hace el navegador: imprimir y elegir «Guardar como PDF» como impresora.',
  'pdf-not-saved': () => 'El PDF no se ha guardado: ahí no se pudo escribir. Elegir otra carpeta.',
  'save-by-browser': () =>
    'En una ventana del navegador, los ficheros los guarda el navegador: guardarlo como descarga.',
  'file-not-saved': ({ file }) =>
    `${file} no se ha guardado: ahí no se pudo escribir. Guardarlo de nuevo en otra carpeta.`,
  'record-not-saved': ({ reason }) =>
    `No guardado: ${notSaved[reason]} Nada cuenta como confirmado hasta que se guarde. Arreglarlo y confirmar de nuevo.`,

  'backup-not-saved': ({ folder, reason }) =>
    `No se ha puesto ninguna copia de seguridad en ${folder}: ${noBackup[reason]} El registro sigue como estaba. Arreglarlo y hacer una copia.`,
  'backup-not-sound': () =>
    'Se ha hecho una copia de seguridad que no supera la verificación, así que no vale: algo del registro no está como se confirmó. Se conservan las copias anteriores. Verificar todo el archivo para ver de qué montaje se trata.',
  'backup-lost': ({ folder }) =>
    `La copia de seguridad de ${folder} no se lee como se escribió, así que no vale. Hacer examinar ese disco y elegir otra carpeta.`,
  'backup-unknown': () => 'Esa copia de seguridad ya no existe. Mirar otra vez la lista y elegir otra.',
  'backup-unusable': ({ name }) =>
    `La copia de seguridad ${name} está dañada, así que no se ha restaurado y el registro sigue como estaba. Elegir otra.`,
  'backup-folder-wrong': ({ folder, fault }) =>
    `«${folder}» no puede recibir copias de seguridad: ${wrongFolder[fault]} Elegir otra carpeta.`,

  'build-unknown': () => 'Este montaje no está en el registro. Abrir la lista de montajes y elegir de nuevo.',
  'sample-not-needed': () =>
    'Este montaje de demostración solo se hace una vez, y solo donde todos los montajes son de motores de demostración. Abrir uno de la lista.',
  'build-moved-on': ({ last }) =>
    `Se ha añadido algo a este montaje desde otro sitio; su última entrada es ahora la ${last}. Mirar qué ha cambiado y repetirlo si sigue valiendo.`,
  'build-of-earlier-rules': ({ entry }) =>
    `La entrada ${entry} de este montaje importado la permitió un Bedplate anterior y va contra las reglas de este. Se puede leer e imprimir, y no se puede añadir nada. Mirar qué se hizo ahí antes de fiarse.`,
  'build-newer': ({ entry }) =>
    `La entrada ${entry} de este montaje la hizo un Bedplate más nuevo. Se puede leer hasta ahí, y con esta versión no se puede añadir nada.`,
  'build-chain-broken': ({ entry }) =>
    `La entrada ${entry} de este montaje no es la que se confirmó, o falta una anterior. No se puede añadir nada. Compararlo con su hoja impresa o con una copia de seguridad.`,
  'build-spec-lost': () =>
    'La ficha con la que se empezó este montaje no está en el registro, así que no se puede dibujar. Restaurar una copia de seguridad.',
  'file-not-ours': () =>
    'Bedplate no puede abrir este fichero y lo ha dejado como estaba. Elegir un montaje exportado (.bedplate), una ficha de biblioteca (.bedplate-spec) o una ficha de motor (.json).',
  'file-unreadable': () =>
    'No se pudo leer el fichero. Comprobar que sigue ahí y que este usuario puede leerlo, y abrirlo de nuevo.',
  'import-too-large': ({ most }) =>
    `El fichero es mayor que cualquier montaje exportado (${most} MB como máximo). No se ha importado nada. Elegir el fichero exportado.`,
  'import-not-ours': () =>
    'El fichero no es un montaje exportado. No se ha importado nada. Elegir un fichero cuyo nombre acabe en .bedplate.',
  'import-newer': () =>
    'El fichero lo exportó un Bedplate más nuevo. No se ha importado nada. Importarlo con esa versión.',
  'import-altered': ({ line }) =>
    `El fichero no está como se exportó: en la línea ${line} se cambió, añadió o cortó algo. No se ha importado nada. Exportarlo de nuevo y traerlo como fichero.`,
  'import-spec-faulty': ({ fault }) =>
    `La ficha del fichero tiene un fallo, así que no se ha importado nada: ${fault}`,
  'import-senseless': () =>
    'Las entradas del fichero no forman un montaje de su motor, así que no se ha importado nada. Preguntar a quien hizo el fichero.',
  'build-name-missing': () => 'El montaje no tiene nombre. Escribir uno, por ejemplo el cliente y la bomba.',
  'person-not-proven': ({ name }) =>
    `${name} tiene PIN, y aún no se ha dado. Elegir a ${name} y escribir el PIN.`,
  'practice-not-kept': ({ name }) =>
    `${name} no está en la lista de personas, así que esta ronda no se guarda. Añadir el nombre a la lista para guardar lo practicado.`,
  'practice-only': () =>
    'Esto es un simulacro: no está en ningún registro, así que nada se exporta, verifica ni guarda. Empezar un montaje para tener registro.',
  'practice-led-by-mechanic': () =>
    'Qué hay que practicar lo fija un mecánico de la lista de personas, que ve también cómo van los demás; si hay mecánicos con PIN, uno ' +
    'de esos. Elegir a un mecánico así como persona del banco.',
  'person-unknown': () => 'Esta persona ya no está en la lista. Mirar otra vez la lista.',
  'person-twice': ({ name }) => `${name} ya está en la lista. Dar al otro un nombre que los distinga.`,
  'people-guarded': () =>
    'La lista de personas está protegida con PIN. Que un mecánico con PIN elija su nombre y lo escriba.',
  'badge-unknown': () =>
    'Nadie de la lista tiene esta tarjeta. Elegir el nombre, o asignar la tarjeta a alguien.',
  'badge-twice': ({ name }) => `Esta tarjeta es de ${name}. Quitársela antes, o usar otra.`,
  'pin-too-short': ({ fewest }) => `El PIN es demasiado corto. Poner al menos ${fewest} cifras o letras.`,
  'pin-wrong': ({ name }) => `Ese no es el PIN de ${name}. Escribirlo de nuevo.`,
  'pin-wanted': ({ name }) => `${name} tiene PIN. Escribirlo.`,
  'pin-wait': ({ seconds }) => `Demasiados PIN erróneos. Esperar ${seconds} s y escribirlo de nuevo.`,
  'second-is-first': ({ name }) =>
    `Es el trabajo de ${name}, y nadie revisa su propio trabajo. Llamar a otra persona.`,
  'second-not-known': ({ name }) =>
    `${name} no está en la lista de personas como mecánico, así que la revisión no valdría. Llamar a un mecánico que esté.`,
  'person-missing': () => 'No hay nadie indicado. Escribir el nombre de la persona del banco.',
  'text-too-long': ({ what, most }) =>
    `${thingText(what)} es demasiado largo. Dejarlo en ${most} caracteres.`,

  'engine-unknown': ({ engine }) =>
    `Aquí no hay ningún motor «${engine}». Elegir uno de la lista de motores.`,
  'engine-faulty': ({ engine }) =>
    `La ficha de «${engine}» tiene fallos, y con ella no se monta nada hasta corregirlos. Figuran al lado.`,
  'engine-named-twice': ({ engine, file }) =>
    `«${engine}» ya es el id de otra ficha. Dar a la de ${file} un id propio.`,
}

const closedFolder = {
  'no-right': 'Dar a este usuario permiso de escritura.',
  'read-only': 'Su disco es de solo lectura: habilitar la escritura.',
  dangling:
    'Un enlace del camino no lleva a ninguna parte: conectar el disco al que lleva, o arreglar el enlace.',
  'too-long': 'La ruta es más larga de lo que admite el sistema: acercar la carpeta a la raíz.',
}

const noBackup = {
  full: 'el disco está lleno.',
  gone: 'la carpeta no está; ¿está conectado el disco o el recurso compartido?',
  closed: 'en la carpeta no se puede escribir.',
}

const wrongFolder = {
  relative: 'escribir la ruta completa, desde la raíz o la unidad.',
  missing: 'esa carpeta no existe.',
  closed: 'no se puede escribir en ella.',
  own: 'es la carpeta de datos o está dentro de ella, y se perdería con ella.',
}

const notSaved = {
  'disk-full': 'el disco está lleno.',
  'read-only': 'en la carpeta de datos no se puede escribir.',
  'disk-fault': 'el disco no lo ha aceptado.',
}
