import type { OfHalf } from '../../en/steps/steps.ts'
import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { counted } from '../formats.ts'
import { patterns } from '../window/parts.ts'

const { halves } = engineParts
const named = ({ position, half }: OfHalf) => `${position} ${halves[half]}`

const frame: Words['steps']['frame'] = {
  title: 'Qué hacer',
  waitsFor: ({ steps: first }) => `Antes: ${first.join(', ')}.`,
  saving: 'Guardando …',
  goOn: 'Continuar',
  whichReading: 'Indicar antes cuál de las dos lecturas vale.',
}

const elsewhere: Words['steps']['elsewhere'] = {
  confirmed: ({ entries, person }) =>
    `Otra ventana u otro banco ha confirmado ${counted(entries, 'entrada', 'entradas')}, ` +
    `${entries === 1 ? '' : 'la última '}por ${person}.`,
  look: 'Lo escrito se conserva. ¿Sigue valiendo aquí?',
  goOn: 'Revisado: continuar',
}

const marks: Words['steps']['marks'] = {
  note: 'Anotar estas marcas',
  asStamped: 'Como están estampadas, en orden desde delante',
  signOfWorn: ({ sign }) => `${sign} para una borrada`,
  stillToRead: ({ positions }) => `Por leer: ${positions.join(', ')}.`,
  band: ({ least, most }) => `${least} a ${most}`,
  wornAway: 'borrada',
  worn: 'borrada',
  noneReadable: 'No se lee ninguna',
}

const fitShells: Words['steps']['fitShells'] = {
  isIn: (half) => `${named(half)}: en su sitio`,
  name: named,
  title: ({ position, half }) => `${position}, mitad ${halves[half]}`,
  shell: ({ grade, pattern, undersize, label }) =>
    [
      `Clase ${grade}`,
      patterns[pattern],
      ...(undersize === null ? [] : [undersize]),
      ...(label === undefined ? [] : [label === null ? 'por pedir' : `de la bandeja: ${label}`]),
    ].join(', ') + '.',
  toOrder: (half) => `El semicojinete de ${named(half)} está aún por pedir. ¿Ha llegado?`,
  hasCome: (half) => `Ha llegado, y está en su sitio: ${named(half)}`,
  asks: (half) => `Montar ${named(half)}, aún por pedir …`,
  noneChosen: 'Aún no hay semicojinete elegido.',
  seating: 'Uña en su muesca, agujero de aceite sobre el conducto.',
  dryAndClean: 'Dorso y alojamiento secos y limpios.',
  inPlace: '✓ En su sitio.',
  allIn: ({ halves: count }) => `✓ Las ${count} mitades están puestas.`,
  in: '✓ en su sitio',
  toFit: 'por montar',
  takeOut: (half) => `Sacar ${named(half)}`,
}

const fitPart: Words['steps']['fitPart'] = {
  isIn: 'Está montado',
  done: '✓ Hecho.',
  whyOut: '¿Por qué se saca otra vez?',
  takeOut: 'Sacarlo',
  takeOutAgain: 'Sacarlo otra vez',
}

const bead: Words['steps']['bead'] = {
  laid: 'Cordón aplicado: poner el reloj en marcha',
  bead: ({ name, sealant, width, closed }) =>
    `${name}: ${sealant}, cordón de ${width} de ancho${closed ? ', cerrado sobre sí mismo' : ''}.`,
  keepOut: 'No debe entrar en:',
  withinReach:
    'Tener antes a mano todo lo necesario para cerrar la unión. Desde que se aplica hasta que la unión está cerrada hay',
  minutes: ({ minutes }) => `${minutes} minutos`,
  whyWiped: '¿Por qué se limpia?',
  wipeOff: 'Limpiarlo',
  usualReasons: ['Tiempo abierto vencido', 'Corrido al cerrar'],
}

const check: Words['steps']['check'] = {
  noteBad: 'Anotar que no está bien',
  noteReading: 'Anotar esta lectura',
  isGood: 'Está bien',
  isGoodAfterAll: 'Al final está bien',
  isNotGood: '! No está bien',
  good: '✓ Bien',
  notGood: '! No está bien',
  reading: ({ least, most }) => `Lectura, ${least} a ${most}`,
  howToType: ({ unit }) => `en ${unit}, o con su unidad: ${unit === 'in' ? '0,12 mm' : '0,005 in'}`,
  measuredWith: 'Arandelas de empuje',
  withWashers: ({ name }) => `medido con arandelas ${name}`,
  washersByTable: ({ name, thickness }) => `Arandelas según la tabla: ${name}, ${thickness} cada una`,
  fitPair: ({ first, second, float }) =>
    first.name === second.name
      ? `Arandelas: dos ${first.name}, ${first.thickness} cada una, para un juego axial de ${float}`
      : `Arandelas: ${first.name}, ${first.thickness}, y ${second.name}, ${second.thickness}, para un juego axial de ${float}`,
  pairStays: 'Las arandelas puestas se quedan.',
  toGet: ({ washers }) =>
    `Por pedir, si no las hay: ${washers.map(({ count, name, thickness }) => `${count} × ${name}, ${thickness}`).join('; ')}.`,
  sayMeasuredWith: 'Indicar con qué arandelas se midió: de ahí salen las que hay que montar.',
  noPairFits: 'Arandelas: no sirve ninguna de la ficha',
  withoutWashers: 'sin arandelas',
  measuredWithout: 'medido sin arandelas',
  measuredWithPair: ({ first, second }) =>
    first === second ? `medido con dos arandelas ${first}` : `medido con arandelas ${first} y ${second}`,
  andWith: 'y',
  washersNotDefined: 'Arandelas: sin definir',
  whatIsWrong: 'Qué está mal',
  whatWasDone: 'No estaba bien: ¿qué se ha hecho desde entonces?',
  isGoodNow: 'Ahora está bien',
}

const finish: Words['steps']['finish'] = {
  void: 'Anulado',
  finished: 'Terminado',
  showSheet: 'Ver la hoja de montaje',
  finish: 'Terminar este montaje',
  isFinished: '✓ Este montaje está terminado. Su trabajo ya no se puede cambiar.',
  lookOnceMore: 'Mirar la hoja una vez más antes de terminar: después su trabajo no se puede cambiar.',
  lookAtSheet: 'Mirar la hoja',
}

const afterwards: Words['steps']['afterwards'] = {
  isVoid: '✕ Este montaje está anulado. Lo registrado permanece.',
  whatToAdd: '¿Qué hay que añadir a este montaje?',
  nextWhy: 'Siguiente: por qué',
  whyAdded: '¿Por qué se añade ahora?',
  add: 'Añadirlo',
  whyVoid: '¿Por qué se anula este montaje?',
  voidIt: 'Anular el montaje',
  amend: 'Enmendar este montaje',
  void: 'Anular este montaje',
}

export const steps: Words['steps'] = {
  frame,
  elsewhere,
  marks,
  fitShells,
  fitPart,
  bead,
  check,
  finish,
  afterwards,
}
