import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { capital, minutesAndSeconds } from '../../formats/index.ts'
import { namesOf } from '../halves.ts'
import { archive } from '../window/archive.ts'
import { patterns } from '../window/parts.ts'
import { sheetMeasured } from './sheet-measured.ts'
import { sheetRun } from './sheet-run.ts'
import { day } from '../formats.ts'

const chosenBy = {
  chart: 'tabla',
  bands: 'intervalos',
  person: 'a mano',
  readings: 'lecturas',
  tray: 'de la bandeja',
}

export const sheet: Words['sheet'] = {
  flaw: {
    altered: 'NO COMO SE CONFIRMÓ',
    newer: 'INCOMPLETO',
    rules: 'SEGÚN REGLAS ANTERIORES',
    apart: 'UNA DE DOS LÍNEAS',
  },
  flawed: ({ mark, reason }) => `${mark}. ${reason}`,
  flawedFoot: ({ mark, foot }) => `${mark} · ${foot}`,
  flawedFileName: ({ mark, fileName }) => `${mark} ${fileName}`,
  title: ({ number }) => `Hoja de montaje ${number}`,
  foot: ({ number, entries, code }) =>
    `Hoja de montaje Bedplate ${number} · ${entries} entradas, control ${code}`,
  fileName: ({ number, entries, code }) => `Hoja de montaje ${number} ${entries}-${code}`,
  verify: 'Verificar este montaje',
  practice: {
    foot: 'PRÁCTICA: un simulacro, no la hoja de un montaje',
    fileName: ({ engine }) => `PRÁCTICA ${engine}`,
    noHeadCode:
      'PRÁCTICA. No se ha montado ningún motor. Este simulacro no está en ningún registro, así que no tiene código de control y no demuestra nada.',
  },

  page: {
    printing: 'Impresión',
    backToBuild: '← Volver al montaje',
    paper: 'Papel',
    saveAsPdf: 'Guardar como PDF',
    print: 'Imprimir',
    numbered: ['página ', ' de '],
  },

  head: {
    demo: ({ note }) => `DEMO. ${note}`,
    unchecked: ({ enteredBy }) =>
      `SIN COMPROBAR. Los valores de la ficha los introdujo ${enteredBy}; ninguna segunda persona los ha comparado con el manual.`,
    engine: 'Motor',
    revision: ({ name, revision }) => `${name}, revisión ${revision} de la ficha`,
    build: 'Montaje',
    serial: 'Número de serie',
    atTheBench: 'En el banco',
    people: ({ people, apprentice }) => `${people.join(', ')}${apprentice ? ' (montaje de aprendiz)' : ''}`,
    started: 'Empezado',
    finished: 'Terminado',
    notFinished: 'sin terminar',
    numbersFrom: 'Números de',
    source: ({ from, enteredBy, checkedBy }) =>
      `${from}; introducidos por ${enteredBy}, ${checkedBy === null ? 'sin revisar' : `revisados por ${checkedBy}`}`,
    accepted: ({ doubt, reason, by, on }) =>
      `Duda aceptada por ${by} el ${day(on)}, porque: ${reason} (${doubt})`,
    entries: ({ entries, code }) => [
      `${entries} entradas, código de control `,
      { code },
      '. Frente a este código, toda manipulación del registro se nota: un registro recortado o reescrito tiene otro. ' +
        'No la impide.',
    ],
  },

  voided: ({ reason, stamp }) => `ANULADO: ${reason} (${stamp})`,
  addedAfter: 'Añadido después de terminar',
  added: ({ stamp, text, reason }) => `${stamp}: ${text} Motivo: ${reason}`,

  benches: {
    title: 'Bancos',
    handedOver: ({ stamp, from, to, note }) =>
      `${stamp}: entregado por ${from} a ${to}${note === '' ? '.' : `. ${note}`}`,
    takenOver: ({ stamp, from, to, reason }) =>
      `${stamp}: tomado por ${to}${from === null ? '' : ` de ${from}`}. Motivo: ${reason}`,
    settled: ({ stamp, bench, entry, reason, givesWay }) =>
      `${stamp}: continuado por separado en dos bancos desde la entrada ${entry}; la línea de ${bench} ${givesWay ? 'no ' : ''}vale. Motivo: ${reason}`,
  },

  results: {
    shells: 'Semicojinetes',
    marks: 'Marcas, alojamiento / muñón',
    grades: ({ split }) => `Semicojinetes, ${namesOf(split).join(' / ')}`,
    clearance: 'Holgura',
    worstCase: 'Caso peor',
    pair: ({ first, second }) => `${first} / ${second}`,
    tightening: 'Apriete',
    procedure: 'Procedimiento',
    fasteners: 'Hecho',
    read: 'Lectura',
    range: ({ least, most }) => (least === most ? least : `${least} a ${most}`),
    unread: ({ count }) => `${count} confirmados sin lectura`,
    outside: ({ numbers }) => `! fuera: ${numbers.join(', ')}`,
    wrench: 'Llave',
    wrenchWith: ({ wrench, number, calibrated }) =>
      `${wrench}${number === null ? '' : `, n.º ${number}`}` +
      (calibrated === null ? '' : `, calibrada el ${day(calibrated)}`),
    notStarted: 'sin empezar',
    underWay: 'en marcha',
    flags: 'Incidencias y sus respuestas',
    noFlags: 'No hubo ninguna.',
    sealant: 'Sellador',
    bead: 'Cordón',
    laid: 'Aplicado',
    closed: 'Última fijación de su unión',
    took: 'Duración',
    minutes: ({ seconds, of }) =>
      seconds === null
        ? `${of} min admisibles`
        : `${seconds > of * 60 ? '! ' : ''}${minutesAndSeconds(seconds)} de ${of} min`,
    whyOver: ({ reason }) => `Cerrada fuera de tiempo: ${reason}`,
    signed: 'Firmado',
    signatures: ['Montado por', 'Revisado por', 'Recibido por'],
    signature: 'Nombre, fecha, firma',
    appendix: 'Detalles',
  },
  fit: {
    title: ({ fit }) => `Semicojinetes: ${fit}`,
    marks: ({ part, typed, stamp }) => `${part}: ${typed ?? 'sin anotar'} (${stamp}).`,
    chosen: ({ stamp }) => `Elegido: ${stamp}.`,
    allowed: ({ limits }) => `Admisible en nuevo: ${limits}.`,
    at: 'En',
    marksHeading: 'Marcas',
    half: ({ half }) => capital(engineParts.halves[half]),
    clearance: 'Holgura',
    chosenBy: 'Elegido por',
    shell: ({ grade, pattern, fitted }) =>
      `${grade}${pattern === null ? '' : `, ${patterns[pattern]}`} ${fitted ? '✓' : '(sin montar)'}`,
    choice: ({ by, reason, label, arrived }) =>
      [
        `${chosenBy[by]}${reason === '' ? '' : `: ${reason}`}`,
        ...(label === undefined ? [] : [label ?? (arrived ? 'pedido, y llegado' : 'por pedir')]),
      ]
        .filter(Boolean)
        .join(', '),
    notComputed: 'sin calcular',
    outside: '! fuera',
  },
  measured: sheetMeasured,

  run: sheetRun,

  checks: {
    title: 'Comprobaciones',
    check: 'Comprobación',
    answer: 'Respuesta',
    step: ({ step, counts }) => `${step}${counts ? '' : ' (respondida de nuevo después)'}`,
    good: 'bien',
    notGood: '! no está bien',
    allowed: ({ least, most }) => `(admisible ${least} a ${most})`,
  },
  steps: {
    title: 'Pasos',
    done: ({ stamp }) => `✓ ${stamp}`,
    notDone: 'sin hacer',
    lookedAt: ({ stamp }) => `; revisado ${stamp}`,
    waitsForSecond: '; ! espera a una segunda persona',
  },
  corrections: {
    title: 'Correcciones',
    none: 'Ninguna.',
    kinds: {
      'pull-taken-back': archive.entries['pull-taken-back'],
      'pull-read-again': archive.entries['pull-read-again'],
      'fastener-loosened': archive.entries['fastener-loosened'],
      'fastener-replaced': archive.entries['fastener-replaced'],
      'run-restarted': archive.entries['run-restarted'],
      'half-taken-out': archive.entries['half-taken-out'],
      'part-taken-out': archive.entries['part-taken-out'],
      'rings-taken-off': archive.entries['rings-taken-off'],
      'measured-part-replaced': archive.entries['measured-part-replaced'],
      'ticks-removed': archive.entries['ticks-removed'],
      'bead-wiped-off': archive.entries['bead-wiped-off'],
      'marks-noted-again': 'marcas anotadas de nuevo',
      'shells-chosen-again': 'semicojinetes elegidos de nuevo',
      'check-answered-again': 'comprobación respondida de nuevo',
      'readings-noted-again': 'medido de nuevo',
      'readings-withdrawn': archive.entries['readings-withdrawn'],
      'step-sent-back': 'devuelto',
    },
  },
  cautions: 'Advertencias',
}
