import type { Words } from '../../words.ts'
import type { TurningLimits } from '../../en/steps/turning.ts'

/** `como máximo 2,5 N·m`, `0,5 N·m a 2,5 N·m`, with what it may rise and what it rose. */
export function turningLimits({ least, most, mostRise, rise }: TurningLimits): string {
  const range = [
    ...(most === null ? [] : [least === null ? `como máximo ${most}` : `${least} a ${most}`]),
    ...(most === null && least !== null ? [`como mínimo ${least}`] : []),
    ...(mostRise === null
      ? []
      : [`subida de ${mostRise} como máximo${rise === null ? '' : ` (subió ${rise})`}`]),
    ...(mostRise === null && rise !== null ? [`subió ${rise} desde la última lectura`] : []),
  ]
  return range.join(', ')
}

const verdicts = {
  free: 'gira libre a mano',
  within: 'dentro de límites',
  under: '! insuficiente',
  over: '! demasiado',
  binds: '! no gira libre',
}

export const turning: Words['turning'] = {
  limits: turningLimits,
  verdicts,
  manualFirst:
    'El manual del fabricante tiene prioridad. Girar el cigüeñal despacio, al menos una vuelta completa, y leer mientras se mueve.',
  reading: ({ unit }) => `Par de giro en ${unit}`,
  byWrench: 'Llave con escala',
  byBalance: 'Dinamómetro de muelle',
  with: 'Leído con',
  arm: 'Palanca, del centro del cigüeñal al dinamómetro',
  howToTypeArm: '250 mm',
  force: ({ unit }) => `Fuerza en el dinamómetro en ${unit}`,
  square: 'Mantener el dinamómetro a escuadra con la palanca. El par es fuerza por palanca.',
  comesTo: ({ torque }) => `Son ${torque}.`,
  last: ({ torque }) => `Lectura anterior: ${torque}.`,
  note: 'Anotar esta lectura',
  turnsFreely: 'Gira libre',
  binds: 'No gira libre …',
  whatBinds: 'Dónde se traba y qué se notó',
  noteBinds: 'Anotar que no gira libre',
  whatWasDone: 'Antes no giraba libre. ¿Qué se ha hecho desde entonces?',
  isFreeNow: 'Ahora gira libre',
  lookFor:
    'El manual del fabricante tiene prioridad. Aflojar un sombrerete tras otro y girar el cigüeñal cada vez: hay que mirar el que lo ' +
    'libera, sus semicojinetes, su aceite, el número y el sentido del sombrerete. Después girar otra vez.',
  capIsLoose: ({ cap }) => `Sombrerete ${cap} aflojado`,
  accept: 'Aceptar …',
  whyAccepted: '¿Por qué se acepta fuera de límites?',
  acceptIt: 'Aceptarlo así',
  again: 'Hay que girar de nuevo …',
  whyAgain: '¿Por qué no vale la lectura?',
  againIt: 'Girar de nuevo el cigüeñal',
  read: ({ typed, torque, verdict, rise, accepted, note }) =>
    [
      ...(typed === null ? [] : [torque === null ? typed : `${typed} = ${torque}`]),
      verdicts[verdict],
      ...(rise === null ? [] : [`subida ${rise}`]),
      ...(accepted === null ? [] : [`aceptado: ${accepted}`]),
      ...(note === '' ? [] : [note]),
    ].join(', '),
  sheet: {
    title: 'Giro del cigüeñal',
    step: 'Paso',
    reading: 'Lectura',
    limits: 'Límites',
    voided: ({ text, reason }) => `${text}; no vale: ${reason}`,
    again: ({ text }) => `${text} (girado de nuevo después)`,
  },
}
