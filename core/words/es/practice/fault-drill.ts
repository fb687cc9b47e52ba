import type { faultDrill as english } from '../../en/practice/fault-drill.ts'
import { counted, listed } from '../formats.ts'

export const faultDrill: typeof english = {
  find: 'En este montaje terminado hay una cosa mal. ¿Qué pieza? Tocarla.',
  shown: 'Se muestra',
  showns: { drawing: 'dibujo', rings: 'segmentos', sheet: 'hoja' },
  sheet: 'Resultados de la hoja',
  notThis: 'Ahí no hay nada mal.',
  onFace: ({ face }) => `Está en esta cara: ${face}.`,
  onRings: ({ piston }) => `Está en los segmentos de ${piston}.`,
  ringsOf: ({ piston, rings }) => `${rings} de ${piston}`,
  itIs: ({ part }) => `Está aquí: ${part}.`,
  found: ({ part }) => ['Sí: ', { strong: part }, '.'],
  both: listed,
  capOf: ({ id }) => `sombrerete ${id}`,
  what: '¿Qué le pasa?',
  kinds: {
    'missed-pull': 'Falta un apriete',
    'shells-swapped': 'Su semicojinete es de otro sitio',
    'bead-over-passage': 'El cordón pasa sobre un conducto de aceite',
    'cap-turned': 'El sombrerete está al revés',
    'gaps-in-line': 'Su abertura está alineada con la contigua',
  },
  notThat: 'Eso aquí está bien.',
  cap: ({ id, to }) =>
    `Sombrerete ${id}: su flecha apunta al extremo ${to === 'nose' ? 'delantero' : 'de salida'}`,
  seen: {
    'missed-pull': ({ number, procedure, pass, pulled }) =>
      `En el dibujo, el anillo de ${number} no está completo. En la hoja, ${procedure}, pasada ${pass}, tiene ` +
      `${counted(pulled - 1, 'fijación', 'fijaciones')} en vez de ${pulled}.`,
    'shells-swapped': ({ shells }) =>
      shells
        .map(({ place, grade, wanted }) => `${place} lleva ${grade}; sus marcas piden ${wanted}.`)
        .join(' ') + ' Las clases están en el dibujo y en la hoja, las marcas solo en la hoja.',
    'bead-over-passage': ({ bead, passage }) =>
      `En el dibujo, ${bead} pasa sobre ${passage}. La hoja solo dice cuándo se aplicó.`,
    'gaps-in-line': ({ piston, rings, least }) =>
      `En el esquema de ${piston}, las aberturas de ${rings} están alineadas; entre contiguas hacen falta ${least} como mínimo. La hoja tiene ` +
      'el mismo ángulo en las dos.',
    'cap-turned': ({ id }) =>
      `En el dibujo, la flecha de ${id} apunta al extremo de salida y está en el otro lado. La hoja no lo muestra.`,
  },
  leaves: ({ place, clearance, allowed }) => `${place} queda con ${clearance}; admisible: ${allowed}.`,
  does: {
    'missed-pull':
      'No se apretó con sus vecinas, y ellas llevan su carga. Ahí la unión cierra de forma desigual, roza y pierde, y la fijación puede aflojarse.',
    'shells-swapped':
      'De dos cojinetes, uno queda más justo y otro más holgado de lo debido. El justo se calienta; el holgado quita aceite a los demás y golpea.',
    'bead-over-passage':
      'Al cerrar la unión, el sellador entra en el conducto de aceite. Lo estrecha, o se desprende y atasca lo que hay detrás.',
    'cap-turned':
      'Sombrerete y apoyo se mandrinaron juntos y solo encajan en un sentido. Al revés, sus mitades no coinciden: el alojamiento ya no es redondo y pellizca el semicojinete.',
    'gaps-in-line':
      'El gas que pasa por una abertura sigue directo por la siguiente. Sopla por el pistón y quema el aceite del cilindro; el motor pierde compresión y echa humo.',
  },
}
