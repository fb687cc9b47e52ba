import type { Words } from '../../words.ts'
import { listed } from '../formats.ts'
import { numberAndKind } from './passes.ts'

const orders = {
  spec: 'de la ficha',
  own: 'propio',
  reversed: 'desde su final',
  'centre-out': 'del centro hacia fuera',
  spiral: 'en espiral',
  crosswise: 'en cruz',
  'end-to-end': 'de extremo a extremo',
}

const pulls = (count: number) => (count === 1 ? '1 apriete' : `${count} aprietes`)

export const clampMap: Words['clampMap'] = {
  title: ({ procedure }) => `Mapa de apriete: ${procedure}`,
  backToBuild: 'Volver al montaje',
  teachingModel:
    'Modelo didáctico. Muestra cómo las fijaciones se quitan carga unas a otras, no lo que aguanta cada una.',
  differMost: (facts) => [
    { strong: `Donde más difieren los dos órdenes es tras la pasada ${numberAndKind(facts)}: ` },
    `la fijación ${facts.fastener} aprieta ${facts.firstLoad} kN con el orden ${orders[facts.first]} y ` +
      `${facts.secondLoad} kN con el orden ${orders[facts.second]}. Tras la última pasada ` +
      (facts.atLast === null ? 'aprietan lo mismo.' : `ninguna fijación difiere más de ${facts.atLast} kN.`),
  ],
  alike: 'Tras ninguna pasada difiere una fijación 0,1 kN o más entre los dos órdenes.',
  sameOrder: 'Los dos lados siguen el mismo orden. Elegir otro para compararlo.',
  difference: ({ first, second, pull }) =>
    `Lo que cada fijación aprieta de más o de menos con el orden ${orders[second]} que con el orden ${orders[first]}, tras ${pulls(pull)}`,
  differenceShown: ({ first, second }) =>
    `En kN, orden ${orders[second]} frente a orden ${orders[first]}. Más oscuro: mayor diferencia de presión entre las caras.`,
  afterPass: 'Tras la pasada',
  pass: numberAndKind,
  between: 'Entre las caras',
  materials: { metal: 'metal', gasket: 'junta' },
  orders,
  inOrder: ({ order }) => `Orden ${orders[order]}`,
  whichOrder: ({ place }) => `Orden ${place}`,
  pulls: 'Apriete por apriete',
  pull: ({ pull, of, pass, fasteners }) =>
    pass === null
      ? `Antes del primero de ${pulls(of)}`
      : `Apriete ${pull} de ${of}, pasada ${pass}: ` +
        listed(fasteners.map((fastener, index) => `fijación ${fastener} en el orden ${index + 1}`)),
  picture: ({ face, order, pull }) =>
    `Mapa de apriete de ${face}, orden ${orders[order]}, tras ${pulls(pull)}`,
  openAlong: ({ percent }) => `Abierta en el ${percent} % de la cara de unión.`,
  hold: ({ least, most }) => `Las fijaciones apretadas ejercen de ${least} a ${most} kN.`,
  nothingPulled: 'Aún no se ha apretado nada.',
  pressure: 'Presión entre las caras',
  open: 'abierta',
  megapascals: ({ least, most }) => `${least} a ${most} MPa`,
  numbers: 'En el disco: la fuerza de la fijación, en kN. Relleno: la que se acaba de apretar.',
  table: ({ pull }) => `Fuerza de cada fijación tras ${pulls(pull)}, en kN`,
  fastener: 'Fijación',
  assumptions: 'Qué supone el modelo',
}
