import type { Words } from '../../words.ts'
import type { Named } from '../../en/window/archive.ts'
import { counted } from '../formats.ts'
import { pairText } from '../halves.ts'

const named = ({ number, name }: Named) => `${number} «${name}»`

export const archive: Words['archive'] = {
  title: 'Archivo',
  states: { open: 'abierto', finished: '✓ terminado', voided: '✕ anulado' },

  // Finding
  search: {
    words: 'Buscar',
    wordsExample: 'motor, número de serie, persona, pieza …',
    saidOf: 'Buscar en',
    anything: 'todo',
    kinds: {
      engine: 'el motor',
      number: 'el número',
      name: 'el nombre',
      serial: 'el número de serie',
      person: 'una persona',
      part: 'una pieza: semicojinete, fijación',
      flag: 'una incidencia',
    },
    startedFrom: 'Empezado desde',
    startedTo: 'hasta',
    builds: 'Montajes',
    states: {
      any: 'cualquiera',
      open: 'abierto',
      finished: 'terminado',
      flagged: 'con incidencias',
      voided: 'anulado',
      forked: 'continuado por separado',
    },
    anyBench: 'cualquiera',
    nothingFound:
      'Ningún montaje encontrado. Quitar una palabra o una fecha, o elegir cualquier estado; un registro nuevo aún no tiene montajes.',
  },
  pages: 'Páginas',
  newer: '← Más nuevos',
  older: 'Más antiguos →',
  page: ({ page }) => `página ${page}`,

  table: {
    choose: 'Elegir',
    chooseBuild: ({ number }) => `Elegir ${number}`,
    number: 'Número',
    build: 'Montaje',
    engine: 'Motor',
    serial: 'Número de serie',
    lastEntry: 'Última entrada',
    entries: 'Entradas',
    state: 'Estado',
    engineOf: ({ engine, demo }) => `${engine}${demo ? ', demo' : ''}`,
    flagged: '! con incidencias',
  },

  // What was ticked
  chosenBuilds: 'Montajes elegidos',
  oneChosen: ({ one }) => ['Elegido: ', { strong: one }, '.'],
  twoChosen: ({ one, other }) => ['Elegidos: ', { strong: one }, ' y ', { strong: other }, '.'],
  compareTwo: 'Comparar los dos',
  twoEngines: 'Son montajes de dos motores: solo se pueden comparar los de un mismo motor.',
  verifyIt: 'Verificarlo',
  tickOne: 'Marcar un montaje para exportarlo o verificarlo; dos de un mismo motor para compararlos.',

  // Exporting
  takeOut: 'Exportar',
  exportOne: 'Exportar como un fichero',
  pullsCsv: 'Aprietes en CSV',
  readingsCsv: 'Lecturas en CSV',
  partsCsv: 'Piezas en CSV',

  // Importing
  import: {
    title: 'Importar un montaje de otro banco',
    dropHere:
      'Soltar aquí un fichero exportado (.bedplate), o elegirlo. Se rechaza si se le ha cambiado un solo ' +
      'byte.',
    chooseFile: 'Elegir un fichero',
    checking: ({ fileName }) => `Comprobando ${fileName} …`,
    file: 'Montaje exportado',
    open: ({ number }) => `Abrir ${number}`,
    added: (facts) =>
      `Importado como ${named(facts)}: ${counted(facts.entries, 'entrada', 'entradas')}, todo como se confirmó.`,
    known: (facts) => `${named(facts)} ya está aquí, entrada por entrada. No se ha cambiado nada.`,
    continued: (facts) =>
      `${named(facts)} se continuó en otro sitio: ahora hay aquí ${counted(facts.added, 'entrada más', 'entradas más')}, ` +
      `${facts.entries} en total.`,
    behind: (facts) =>
      `${named(facts)} tiene aquí ${counted(facts.behind, 'entrada más', 'entradas más')} que en el fichero. ` +
      'No se ha cambiado nada.',
    fork: (facts) =>
      `${named(facts)} se continuó de forma distinta en dos sitios: desde la entrada ${facts.at}, el fichero no es lo registrado aquí. ` +
      'No se ha cambiado nada.',
    photosLost: ({ photosLost }) =>
      `${photosLost === 1 ? '1 de sus fotos está dañada o falta' : `${photosLost} de sus fotos están dañadas o faltan`}, en el fichero y aquí. ` +
      'Se indica en su lugar; el montaje está como se confirmó.',
    fileRefused: ({ fileName }) => `${fileName}:`,
    engineOpened: ({ name, fileName }) =>
      `${name}, de ${fileName}, está en la lista de motores hasta cerrar Bedplate. Para conservarlo, poner el fichero en la ` +
      'carpeta de las fichas de motores.',
  },

  forked: {
    entry: ({ at }) => `Entrada ${at}`,
    what: 'Qué',
    when: 'Cuándo',
    who: 'Quién',
    code: 'Código',
    here: 'Aquí',
    inFile: 'En el fichero',
    unknownEntry: 'una entrada que solo puede leer un Bedplate más nuevo',
    whatToDo:
      'Los dos tienen el mismo comienzo. Averiguar cuál de los dos se hizo en el motor; el otro se puede ' +
      'anular en el banco que lo tiene.',
  },
  entryHolds: ({ kind, holds }) => `${kind}: ${holds}`,
  entries: {
    'build-started': 'montaje empezado',
    'marks-noted': 'marcas anotadas',
    'shells-chosen': 'semicojinetes elegidos',
    'half-fitted': 'semicojinete montado',
    'half-taken-out': 'semicojinete sacado',
    'part-fitted': 'pieza montada',
    'part-taken-out': 'pieza sacada',
    'crank-turned': 'cigüeñal girado',
    'turning-accepted': 'par de giro aceptado fuera de límites',
    'turning-voided': 'par de giro anulado',
    'place-done': 'punto hecho',
    'place-undone': 'punto deshecho',
    'rings-fitted': 'segmentos montados',
    'rings-taken-off': 'segmentos quitados',
    'limit-measured': 'medido contra límites',
    'limit-accepted': 'lectura aceptada fuera de límites',
    'measured-part-replaced': 'pieza medida cambiada',
    'parts-ticked': 'piezas montadas',
    'ticks-removed': 'piezas montadas retiradas',
    'part-left-over': 'pieza sobrante',
    'parts-counted': 'piezas contadas',
    'photo-added': 'foto añadida',
    'photo-skipped': 'sin foto, con motivo',
    'photo-withdrawn': 'foto retirada',
    'revision-taken-over': 'revisión más nueva de la ficha adoptada',
    'step-reopened': 'paso abierto otra vez',
    'step-skipped': 'paso omitido',
    'skip-taken-back': 'paso omitido que se hará pese a todo',
    'note-written': 'nota escrita',
    'bead-laid': 'cordón aplicado',
    'bead-wiped-off': 'cordón limpiado',
    'check-answered': 'comprobación respondida',
    'readings-noted': 'lecturas anotadas',
    'readings-withdrawn': 'lecturas retiradas',
    'undersize-declared': 'submedida declarada',
    'basis-decided': 'decidido entre marcas y lecturas',
    'shells-pinned': 'semicojinetes elegidos a mano',
    'shells-released': 'semicojinetes ya no elegidos a mano',
    'tray-noted': 'bandeja contada',
    'thread-read': 'hilo calibrado leído',
    'run-started': 'procedimiento empezado',
    'fasteners-declared-new': 'fijaciones declaradas nuevas',
    'fastener-pulled': 'fijación apretada',
    'pull-taken-back': 'apriete retirado',
    'pull-read-again': 'apriete leído de nuevo',
    'problem-noted': 'problema anotado',
    'flag-answered': 'incidencia respondida',
    'fastener-loosened': 'fijación aflojada',
    'fastener-replaced': 'fijación cambiada',
    'pass-repeated': 'pasada repetida',
    'run-restarted': 'procedimiento empezado de nuevo',
    'run-paused': 'procedimiento en pausa',
    'run-resumed': 'procedimiento reanudado',
    'step-confirmed': 'paso revisado por una segunda persona',
    'step-sent-back': 'paso devuelto por una segunda persona',
    'build-finished': 'montaje terminado',
    'build-amended': 'montaje enmendado',
    'build-voided': 'montaje anulado',
    'build-handed-over': 'entregado a otro banco',
    'build-taken-over': 'tomado por otro banco',
    'fork-settled': 'decidido qué línea vale',
  },

  compared: {
    title: 'Dos montajes lado a lado',
    differences: ({ different, all }) => `Diferencias: ${different} de ${all}.`,
    sameSpec: 'Los dos se montaron con la misma ficha, letra por letra.',
    otherSpec: '! Se montaron con revisiones distintas de la ficha: lo que se pide puede diferir también.',
    show: 'Mostrar',
    shown: { differences: 'lo que difiere', all: 'todo' },
    what: 'Qué',
    parts: {
      bearings: 'Marcas y semicojinetes',
      checks: 'Comprobaciones',
      runs: 'Procedimientos',
      pulls: 'Aprietes',
      steps: 'Pasos',
    },
    shells: ({ housing, journal, split, upper, lower }) =>
      `alojamiento ${housing ?? '?'}, muñón ${journal ?? '?'}: ` +
      pairText({ split, upper: upper ?? '–', lower: lower ?? '–' }),
    run: ({ pulls, takenBack, flags, ownOrder }) =>
      `aprietes: ${pulls}, retirados: ${takenBack}, incidencias: ${flags}${ownOrder ? ', orden propio' : ''}`,
    stepDone: ({ at, person }) => `✓ ${at}, ${person}`,
  },
}
