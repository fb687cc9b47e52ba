import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const builds = (count: number) => counted(count, 'montaje', 'montajes')
const entries = (count: number) => counted(count, 'entrada', 'entradas')

export const record: Words['record'] = {
  tables: {
    size: (facts) =>
      `${facts.fit}, ${facts.position}, ${facts.part}, plano ${facts.plane}, dirección ${facts.direction}`,
    pull: ({ procedure, pass, fastener }) => `${procedure}, pasada ${pass}, ${fastener}`,
    adapter: ({ name, offset, angle }) => `${name}, ${offset} a ${angle}`,
  },
  title: 'Registro',
  isWhole: '¿Está todo como se confirmó?',
  codes:
    'Cada entrada lleva un código sobre sí misma y la anterior. Comprobar los códigos descubre qué se alteró ' +
    'y dónde. Mientras tanto se puede seguir trabajando en el banco.',
  backups: 'Copias de seguridad',
  doctor: 'Estado del sistema, para leer por teléfono',

  verify: {
    whole: 'Verificar todo el archivo',
    followed: ({ builds: done, of }) => `Comprobados ${done} de ${builds(of)}`,
    stop: 'Parar',
    stopped: 'Parado antes del final. Del resto no se dice nada.',
    isWhole: ({ builds: count, entries: all, witnesses }) =>
      `✓ ${count === null ? '' : `${builds(count)} con `}${entries(all)}: todo está como se ` +
      `confirmó.${witnessWords(witnesses)}`,
    buildIsBroken: '! Este montaje no está como se confirmó.',
    wholeIsBroken: '! El registro en conjunto no está como se confirmó.',
    someAreBroken: ({ broken, builds: all }) =>
      `! Montajes que no están como se confirmaron: ${broken} de ${all}.`,
    buildCode: ({ head, at }) => [
      'Código de control, como en su hoja: ',
      { code: head },
      `, comprobado ${at}.`,
    ],
    wholeCode: ({ head, at }) => [
      'Código sobre todo: ',
      { code: head },
      `, comprobado ${at}. Compararlo con el código de una copia de seguridad: un registro recortado o reescrito tiene ` +
        'otro.',
    ],
    rebuildLists: 'Rehacer las listas a partir de las entradas',
  },

  compare: {
    title: 'Comparar con una hoja, una exportación o una copia',
    whatFor:
      'Quien reescribe el registro entero crea códigos nuevos que encajan entre sí. No encajan con lo que se ' +
      'entregó antes: soltar aquí un fichero así, o escribir el código de control que figura en una hoja.',
    comparing: 'Comparando …',
    chooseFile: 'Elegir un fichero',
    headCode: 'Código de control',
    lookForIt: 'Buscarlo',
    file: 'Hoja, exportación o copia',
    lines: {
      'same-entries': ({ name, entries: all, since }) =>
        `${name}: ${all === 1 ? 'la única entrada es igual' : `las ${all} entradas son iguales`} aquí.${sinceText(since)}`,
      'entry-has-code': ({ name, entry, since }) =>
        `${name}: la entrada ${entry} tiene este código; es ` +
        (since === 0 ? 'la última.' : `${since} anterior a la última.`),
      'not-same': ({ name, why }) => `${name}: ${why}`,
    },
  },

  backup: {
    making: 'Haciendo y comprobando una copia …',
    make: 'Hacer una copia ahora',
    byItself: 'Se hace una automáticamente cada día y al terminar cada montaje.',
    none: 'Aún no hay ninguna.',
    choose: 'Elegir',
    made: 'Hecha',
    builds: 'Montajes',
    entries: 'Entradas',
    headCode: 'Código de control',
    size: 'Tamaño',
    inThe: 'Guardada en',
    of: 'De',
    chooseOf: ({ at }) => `Copia de seguridad de ${at}`,
    newest: 'la más reciente',
    kilobytes: ({ bytes }) => `${Math.max(1, Math.round(bytes / 1000))} kB`,
    places: { 'data-folder': 'carpeta de datos', 'second-folder': 'segunda carpeta' },
    ofBench: ({ own, broken }) =>
      `${own ? 'este banco' : 'otro banco'}${broken > 0 ? ` · ! ${broken} no como se confirmó` : ''}`,
    putInPlace: ({ at, builds: count, entries: all }) => [
      '¿Poner la copia de seguridad de ',
      { strong: at },
      ` en lugar del registro? Contiene ${builds(count)} con ${entries(all)}; lo confirmado ` +
        'después no está en ella. El fichero actual se conserva al lado con otro nombre, y no se ' +
        'sobrescribe nada.',
    ],
    ofAnother: 'Es de otro banco: sus montajes sustituyen a los de este.',
    wasBroken: 'Algo en ella no estaba como se confirmó cuando se hizo; verificar después todo el archivo.',
    putting: 'Restaurando …',
    put: 'Restaurar esta copia',
    isInPlace: '✓ La copia de seguridad está restaurada.',
    keptAs: ({ name }) => [
      'El fichero que había se conserva en la carpeta de datos como ',
      { code: name },
      '. Entregarlo a quien mantiene el ordenador.',
    ],
    nothingThere: 'Antes no había ningún fichero en su lugar.',
    goOn: 'Continuar con ella',
    secondFolder: 'Una segunda copia va siempre a esta carpeta: otro disco, un recurso compartido',
    secondFolderExample: 'la ruta completa; vacío para ninguna segunda copia',
    keepThere: 'Guardar ahí una copia',
    keepNone: 'No guardar segunda copia',
    copiesGoTo: ({ folder }) => `Las copias van a ${folder}.`,
    noSecondCopy: 'No hay segunda copia.',
  },

  rescue: {
    isBack: 'El registro está restaurado',
    cannotBeUsed: 'El registro no se puede usar',
    nothingChanged: 'No se ha cambiado nada, y no se puede montar nada hasta arreglarlo.',
    noBackup: ({ secondFolder }) =>
      `No hay copia de seguridad en la carpeta de datos${secondFolder ? ` ni en ${secondFolder}` : ''}. Hacer examinar el fichero ` +
      'antes de hacer nada más con él.',
    checkedBackups: 'Copias de seguridad comprobadas al hacerse',
    lookAgain: 'Mirar otra vez',
    beginEmptySure:
      '¿Empezar con un registro vacío? Los montajes que había dejan de estar en las listas; no se borra nada.',
    beginEmpty: 'Empezar con un registro vacío',
    nothingToBring: 'No hay nada que restaurar …',
    stillInMemory: 'Lo confirmado antes sigue en la memoria de este programa. Una copia lo salva todo.',
    folder: 'Carpeta para la copia',
    folderExample: 'la ruta completa; vacío para la carpeta de las copias',
    writing: 'Escribiéndola y comprobándola …',
    write: 'Escribir una copia ahora',
    written: ({ builds: count, entries: all, file }) => [
      `✓ ${builds(count)} con ${entries(all)} en `,
      { code: file },
      '. Es una copia de seguridad como cualquier otra y se puede restaurar más abajo.',
    ],
  },
}

function witnessWords(witnesses: number): string {
  if (witnesses === 0) return ''
  return witnesses === 1
    ? ' 1 código de control entregado sigue coincidiendo.'
    : ` ${witnesses} códigos de control entregados siguen coincidiendo.`
}

function sinceText(since: number): string {
  if (since === 0) return ''
  return since === 1
    ? ' Desde entonces se añadió 1 entrada.'
    : ` Desde entonces se añadieron ${since} entradas.`
}
