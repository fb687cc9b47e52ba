import type { recordWords as english } from '../../en/problems/record.ts'
import { thingText } from './named-thing.ts'
import { day, dayAndTime } from '../formats.ts'

export const recordWords: typeof english = {
  'record-not-in-place': ({ file, fault }) =>
    `No guardado: ${file} ${outOfPlace[fault]} mientras el programa lo tenía abierto. No se puede confirmar nada más. Devolverlo a su sitio, o escribir ahora una copia de lo que sigue en memoria, antes de cerrar el programa.`,
  'record-not-missing': () =>
    'Aquí hay un registro, así que no se empieza uno vacío. Mirar otra vez la ventana.',
  'clock-unusable': ({ at }) =>
    `No guardado: el reloj de este ordenador marca ${dayAndTime(at)}, que no se puede registrar. Poner el reloj en hora y confirmar de nuevo.`,

  'build-spec-altered': () =>
    'La ficha con la que se empezó este montaje se ha alterado en el registro: su texto ya no es el que nombra la primera entrada. No se puede añadir nada ni fiarse de sus números. Restaurar una copia de seguridad.',
  'build-spec-swapped': () =>
    'La lista de montajes asigna a este otra ficha que la que nombra su primera entrada. Se muestra con la ficha de su primera entrada. No se puede añadir nada hasta rehacer las listas a partir de las entradas (en la página «Registro y copias»).',
  'build-unlisted': () =>
    'Las entradas de este montaje están en el registro, pero la lista de montajes lo ha perdido. Rehacer las listas a partir de las entradas, en la página «Registro y copias».',
  'build-list-differs': ({ columns }) =>
    `La lista de montajes dice de este montaje algo distinto que sus entradas (${columns.map((each) => columnNames[each] ?? each).join(', ')}). Valen las entradas. Rehacer las listas a partir de ellas.`,
  'build-number-missing': ({ number }) =>
    `El número ${number} se dio a un montaje que ya no está en el registro. Restaurar una copia de seguridad que lo tenga, o importar de nuevo su exportación.`,
  'build-entry-unreadable': ({ entry }) =>
    `La entrada ${entry} de este montaje tiene una hora, un nombre o un número que ningún Bedplate escribe. Se puede leer hasta ahí, y no se puede añadir nada. Compararla con su hoja impresa o con una copia de seguridad.`,
  'build-row-unreadable': ({ columns }) =>
    `Esta fila de la lista no se puede leer: ${columns.map(rowFault).join(', ')}. A los demás montajes no les afecta. Verificar todo el archivo y rehacer las listas a partir de las entradas.`,
  'witness-differs': ({ kind, at, entries, head }) =>
    kind === 'backup'
      ? `Una copia de seguridad del ${day(at)} tiene ${entries} entradas, y ahora el registro tiene menos. O se restauró después una copia más antigua, o se quitaron entradas.`
      : `${witnessNames[kind]} del ${day(at)} tiene el código de control ${head.slice(0, 16)} tras la entrada ${entries}, y el montaje de aquí tiene otro, o acaba antes. O se restauró después una copia más antigua, o se reescribió el montaje. Comparar ambos.`,

  'verify-file-unknown': ({ name }) =>
    `«${name}» no es una exportación ni una copia de seguridad, y no lleva código de control en el nombre. Soltar aquí un montaje exportado o una copia, o escribir el código que figura en una hoja.`,
  'verify-code-unknown': ({ code }) =>
    `Ninguna entrada de los montajes de aquí tiene el código de control ${code}. Mirar si está escrito como en la hoja. Si lo está, ese montaje se alteró, se quitó o nunca estuvo en este registro.`,
  'verify-build-missing': ({ name }) => `${name} no está en este registro, ni entero ni en parte.`,
  'verify-build-differs': ({ entry }) =>
    `Aquí la entrada ${entry} no es la misma que en el fichero. Una de las dos se reescribió después de confirmada.`,
  'verify-build-shorter': ({ entries, there }) =>
    `El montaje de aquí acaba tras la entrada ${entries}; el fichero tiene ${there}. Aquí faltan entradas, o se restauró una copia más antigua.`,

  'backup-carries-broken': ({ count }) =>
    `Se ha hecho una copia de seguridad con ${count === 1 ? 'un elemento que no está como se confirmó' : `${count} elementos que no están como se confirmaron`}. Así consta en la lista, y al lado se conserva la última copia íntegra. Verificar todo el archivo para ver de qué se trata.`,

  'spec-file-unread': ({ file, reason, code }) =>
    `${file} ${unread[reason]}${code === '' ? '' : ` (${code})`}.`,
  'import-busy': () => 'Se está importando otro fichero. Esperar a que acabe y elegir este de nuevo.',
  'import-against-rules': ({ entry, why }) =>
    `La entrada ${entry} del fichero no pudo confirmarse en ese punto, así que no se ha importado nada: ${why}`,
  'entry-not-first': () => 'no es comienzo de un montaje.',
  'entry-out-of-place': () =>
    'solo puede seguir a la entrada anterior que la produce, y aquella no llevaba a esta.',
  'entry-not-as-decided': () => 'lo que dice no se sigue de las entradas anteriores.',
  'name-unreadable': ({ what }) =>
    `${thingText(what)} tiene signos que no se pueden ver ni leer: un salto de línea, un carácter de control o de dirección de la escritura, o nada visible. Escribirlo de nuevo a mano.`,
  'request-too-large': () =>
    'Lo enviado es mayor que todo lo que pide este programa. No se ha cambiado nada.',
}

const outOfPlace = {
  gone: 'se borró o se movió',
  replaced: 'se sustituyó por otro fichero',
  shortened: 'quedó recortado',
}

const unread = {
  folder:
    'es la carpeta de las fichas de motores y no se puede leer: dar permiso a este usuario, o elegir otra',
  missing: 'no está. Comprobar el nombre',
  'is-folder': 'es una carpeta. Nombrar los ficheros que contiene',
  'not-a-file': 'no es un fichero de texto, así que no es una ficha de motor',
  'too-large': 'es mayor que cualquier ficha de motor',
  dangling: 'lleva a un fichero que no está. Devolver el fichero a su sitio, o quitar el enlace',
  'not-text': 'no es texto UTF-8. Guardarlo de nuevo así',
  closed: 'no se puede leer. Dar a este usuario permiso de lectura',
}

const witnessNames = { sheet: 'La hoja', export: 'La exportación', backup: 'La copia de seguridad' }

const columnNames: Readonly<Record<string, string>> = {
  year: 'el año',
  name: 'el nombre',
  serial: 'el número de serie',
  started_at_utc: 'cuándo se empezó',
  finished: 'si está terminado',
  voided: 'si vale',
  flagged: 'si hubo incidencias',
}

const rowFaults: Readonly<Record<string, string>> = {
  id: 'su id no es válido',
  startedAt: 'la hora de inicio no es válida',
  lastAt: 'la hora de la última entrada no es válida',
}

/** Of any other column its name has to do. */
function rowFault(column: string): string {
  return rowFaults[column] ?? column
}
