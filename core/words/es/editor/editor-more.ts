import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { patterns } from '../window/parts.ts'

export const editorMore: Words['editor']['more'] = {
  notSaid: ({ of }) => `${of}: sin indicar`,
  split: 'Las mitades van',
  splits: { 'upper-lower': 'una sobre otra', 'left-right': 'una junto a otra' },
  drawn: ({ of }) => `${of}: medida y clase del plano`,
  drawnExample: '62 mm H6',
  pattern: ({ grade }) => `Trama de ${grade}`,
  patterns,
  measuring: {
    title: 'Cómo se miden muñones y alojamientos',
    means:
      'Sin ello cada uno se mide en dos planos y dos direcciones. La conicidad vale para todo el cojinete o para la longitud que se diga aquí.',
    planes: 'Planos a lo largo del cojinete',
    directions: 'Direcciones en cada plano',
    outOfRound: 'Ovalización, como máximo',
    taper: 'Conicidad, como máximo',
    taperPer: 'La conicidad vale para una longitud de',
    planesApart: 'Del primer plano al último',
    add: 'Añadir cómo se miden',
  },
  seating: {
    title: 'Cómo van los semicojinetes',
    means:
      'Dónde van la ranura, el agujero de aceite y la uña de cada mitad: se dice junto a ella al montarla.',
    halves: 'Las dos mitades de un cojinete',
    parts: { alike: 'son la misma pieza', differ: 'son piezas distintas' },
    upper: 'La mitad superior o izquierda',
    lower: 'La mitad inferior o derecha',
    add: 'Añadir cómo van',
  },
  warm: {
    title: 'Holgura en caliente',
    means:
      'Cuánto se dilata cada uno, en millonésimas de su medida por kelvin (10⁻⁶/K): unas 23 el aluminio, de 11 a 12 el acero y la fundición.',
    housing: 'Alojamiento, 10⁻⁶/K',
    journal: 'Muñón, 10⁻⁶/K',
    shell: 'Semicojinetes, 10⁻⁶/K',
    oil: 'Temperatura del aceite',
    add: 'Añadir el motor caliente',
  },
  walls: ({ undersize }) => `Paredes de ${undersize}, como están impresas`,
  wallsMean: 'Sin paredes propias, cada clase de una submedida es más gruesa en la mitad de esta.',
  addWall: 'Añadir una pared',
  chartFor: 'Tabla de selección para',
  allBearings: 'todos',
  newChartFor: 'Otra tabla, para',
  addChart: 'Empezar esta tabla',
  mixed: 'Las dos arandelas son de espesor distinto',
  mixes: { no: 'nunca', yes: 'donde el juego lo pida' },

  headFace: {
    title: 'Cara de apoyo de la cabeza',
    means: 'Se toma una habitual donde el manual no da ninguna.',
    outer: 'Diámetro exterior',
    hole: 'Diámetro del agujero debajo',
    add: 'Añadir la cara',
  },
  workingLoad: {
    title: 'Carga con el motor en marcha',
    means: 'Solo para aprender: qué tira de cada una y por dónde entra, de 0 a 1 (n de VDI 2230).',
    force: 'Fuerza en cada una',
    introduction: 'Por dónde entra',
    add: 'Añadir la carga',
  },
  layers: {
    title: 'Piezas apretadas, desde la cabeza',
    material: 'Material',
    thickness: 'Espesor',
    add: 'Añadir una pieza',
  },

  ringRule: 'Cómo se da la separación entre puntas',
  ringRules: { limits: 'por sus límites', bore: 'como parte del diámetro', none: 'no se da' },
  perBore: 'Mínima, como parte del diámetro: 0,004 para 0,004 mm por milímetro',
  minimum: 'Pero nunca menos de',
  mostPerBore: 'Máxima, como parte del diámetro',
  endGap: ({ limit }) => `Separación entre puntas. ${limit}`,
  inGroove: ({ limit }) => `En la ranura. ${limit}`,
  ringTitle: ({ ring }) => `${ring}: puntas y ranura`,
  whereGroove: 'Cómo se mide la holgura en la ranura',
  offPin: 'Abertura apartada de los extremos del bulón',
  offThrust: 'Abertura apartada de los lados de empuje',
  thrustSide: 'Lado de empuje, mirando la cabeza, delante arriba',
  thrustSides: { left: 'izquierda', right: 'derecha' },
  moreRings: 'Segmentos de otros pistones',

  capByCap: 'Un sombrerete pasa por todas las pasadas antes que el siguiente',
  only: ({ count }) =>
    count === 0
      ? 'Se comprueban: todas las del orden'
      : `Se comprueban: ${counted(count, 'fijación', 'fijaciones')}`,
  newOrder: 'Nombre de otro orden',
  addOrder: 'Añadir el orden',
  orderTakenOut: ({ order }) => `Quitar el orden ${order}`,
}
