import type { Words } from '../../words.ts'
import type { Bounds } from '../../en/steps/limits.ts'

const range = ({ least, most }: Bounds) => {
  if (least === null) return `hasta ${most}`
  return most === null ? `desde ${least}` : `${least} a ${most}`
}
const verdicts = {
  new: 'como nuevo',
  service: 'dentro del límite de servicio',
  outside: '! fuera de límites',
}

export const limits: Words['limits'] = {
  title: ({ name, at }) => `${name}, ${at}`,
  range,
  verdicts,
  newPart: ({ range: bounds }) => `Nuevo: ${bounds}`,
  usedPart: ({ range: bounds }) => `Límite de servicio: ${bounds}`,
  reading: ({ unit }) => `Lectura en ${unit}`,
  note: 'Anotar esta lectura',
  isOutside: ({ typed }) =>
    `! ${typed} está fuera de límites. Medir de nuevo, aceptarlo con un motivo, o cambiar la pieza.`,
  accept: 'Aceptar …',
  whyAccepted: ({ name, at }) => `${name}, ${at}: ¿por qué se acepta fuera de límites?`,
  acceptIt: 'Aceptarlo así',
  replace: 'Cambiado …',
  whatReplaced: ({ name, at }) => `${name}, ${at}: ¿qué se ha cambiado o retocado?`,
  replaceIt: 'Está cambiado: medir de nuevo',
  allDone: ({ readings }) =>
    readings === 1 ? '✓ La lectura está anotada.' : `✓ Las ${readings} lecturas están anotadas.`,
  places: 'Todos los puntos',
  toMeasure: 'por medir',
  read: ({ name, at, typed, verdict, accepted }) =>
    `${name}, ${at}: ${typed}, ${verdicts[verdict]}${accepted === null ? '' : `, aceptado: ${accepted}`}`,
  replacedFor: ({ text, replaced }) => `${text}; cambiado: ${replaced}`,
  again: ({ text }) => `${text} (medido de nuevo después)`,
  pictures: {
    'ring-gap': 'El segmento solo en su cilindro, a escuadra: la galga entra entre sus puntas.',
    'groove-clearance': 'El segmento en su ranura: la galga entra entre segmento y ranura.',
    'piston-clearance': 'El pistón en su cilindro: la holgura en la falda, en perpendicular al bulón.',
    'rod-side': 'La cabeza de biela en su muñequilla: la galga entra entre biela y brazo.',
    'run-out': 'El eje sobre dos bloques en V: se lee el reloj comparador en una vuelta.',
    'deck-height': 'El pistón en su punto muerto superior: de su cabeza al plano del bloque.',
    other: 'El instrumento en la pieza.',
  },
  sheet: { title: 'Medido contra límites', limits: 'Límites', reading: 'Lectura' },
}
