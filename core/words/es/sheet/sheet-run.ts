import { minutesAndSeconds } from '../../formats/index.ts'
import type { Words } from '../../words.ts'
import { numberAndKind } from '../tightening/passes.ts'

const flagAbout = { under: 'insuficiente', over: 'demasiado', moved: 'ha girado', problem: 'problema' }

export const sheetRun: Words['sheet']['run'] = {
  states: { done: 'hecho', started: 'en marcha', 'not-started': 'sin empezar' },
  ownOrder: ({ own, ofMaker, reason, stamp }) =>
    `! Orden propio, no el del fabricante: ${own.join(', ')}. Motivo: ${reason} (${stamp}). ` +
    `Orden del fabricante: ${ofMaker.join(', ')}.`,
  declaredNew: ({ group, stamp }) => `Declarado nuevo: ${group} (${stamp}).`,
  pass: 'Pasada',
  number: 'N.º',
  where: 'Dónde',
  target: 'Valor',
  result: 'Resultado',
  whenWho: 'Cuándo, quién',
  passAndKind: numberAndKind,
  window: ({ target, least, most }) => `${target} (${least} a ${most})`,
  gap: 'abertura de la cara de unión',
  done: 'hecho',
  scaleAndFastener: ({ scale, fastener }) => `${scale} en la escala, ${fastener} en la fijación`,
  clamping: ({ read, clamping }) => `${read}; ${clamping} sin el par de autofrenado`,
  running: ({ torque }) => `par de autofrenado ${torque}, que se suma`,
  turnedOn: ({ read, whole }) => `${read} más, ${whole} en total`,
  atTorque: ({ torque }) => `a ${torque}`,
  waited: ({ seconds, shortened }) =>
    `espera de ${minutesAndSeconds(seconds)}${shortened === null ? '' : `, ! acortada: ${shortened}`}`,
  sure: 'se preguntó por esta longitud: mirada de nuevo, y correcta',
  longer: ({ stretch }) => `${stretch} más larga`,
  verdicts: {
    unread: 'confirmado sin lectura',
    within: 'dentro',
    under: '! insuficiente',
    over: '! demasiado',
    moved: '! ha girado',
  },
  readFirst: ({ first, reason, stamp }) => `primera lectura: ${first}; leído de nuevo: ${reason} (${stamp})`,
  held: ({ wrench, adapter, offset, angle }) => `${wrench} con ${adapter}, ${offset} a ${angle}`,
  setAside: {
    loosened: 'ya no vale: la fijación se aflojó',
    'pass-repeated': 'ya no vale: la pasada se repitió',
    'run-restarted': 'ya no vale: el procedimiento se empezó de nuevo',
  },
  beforeItsTurn: ({ reason }) => `antes de que le tocara: ${reason}`,
  takenBack: ({ reason, stamp }) => `retirado: ${reason} (${stamp})`,
  flag: ({ flag, fastener, text, about, stamp }) =>
    `! Incidencia ${flag}${fastener === null ? '' : `, fijación ${fastener}`}: ` +
    `${text ?? flagAbout[about]} (${stamp}).`,
  answer: ({ text, stamp }) => `Respuesta: ${text} (${stamp}).`,
  notAnswered: 'SIN RESPONDER.',
  paused: ({ from, reason, to }) =>
    `En pausa desde ${from}${reason === '' ? '' : `: ${reason}`}; reanudado ${to}.`,
}
