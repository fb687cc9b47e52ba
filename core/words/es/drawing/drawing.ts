import type { Words } from '../../words.ts'
import type { SeenFace } from '../../en/drawing/drawing.ts'

const ways = { above: 'arriba', below: 'abajo' }
const noses = { left: 'a la izquierda', top: 'arriba', right: 'a la derecha', bottom: 'abajo' }

function seenFrom(from: SeenFace['from']): string {
  if (!('upsideDown' in from)) return `vista desde ${ways[from.of]}`
  const end =
    from.of === 'side' ? from.side : from.of === 'nose' ? 'el extremo delantero' : 'el extremo de salida'
  return `vista desde ${end}${from.upsideDown ? ', invertida' : ''}`
}

const faceParts = {
  seal: 'Retén',
  'two-piece-seal': 'Retén de dos piezas',
  plug: 'Tapón',
  'check-valve': 'Válvula antirretorno',
  strainer: 'Colador de aceite',
}

export const drawing: Words['drawing'] = {
  // On the sheet
  nose: 'DELANTE',
  driveEnd: 'SALIDA',
  bore: ({ numbers }) => `cil. ${numbers.join(', ')}`,
  thrust: 'empuje',
  noSealant: 'sin sellador',
  halfOf: ({ bearing, half }) => `${bearing} ${half}`,
  view: ({ face, from, nose }) =>
    `${face}, ${seenFrom(from)}${nose === null ? '' : `, extremo delantero ${noses[nose]}`}`,
  notToScaleAcross: ({ view }) => `${view}. Sin escala a lo ancho`,
  outsideLimits: 'fuera de límites',

  pinStands: { towards: 'hacia quien mira', away: 'hacia el otro lado' },
  orientations: {
    upright: 'derecho',
    'upside-down': 'invertido',
    flat: 'tumbado',
    'turned-over': 'tumbado, dado la vuelta',
  },
  onItsSide: ({ side }) => `apoyado de lado: ${side}`,

  // As a list
  list: {
    nose: 'Extremo delantero del cigüeñal',
    driveEnd: 'Extremo de salida',
    fastener: ({ number, where }) => `Fijación ${number}, ${where}`,
    fastenerState: ({ fastener, state, more }) => `${fastener}: ${state}${more === null ? '' : `, ${more}`}`,
    fastenerStates: {
      waiting: 'en espera',
      next: 'siguiente',
      'after-next': 'la de después',
      'partly-done': 'hecha en parte',
      done: 'hecha',
      flagged: 'con incidencia',
    },
    shareOfPasses: ({ percent }) => `${percent} % de sus pasadas`,
    half: ({ bearing, id, half }) => `${bearing} ${id} ${half}`,
    halfState: ({ half, parts }) => `${half}: ${parts.join(', ')}`,
    grade: ({ grade }) => `clase ${grade}`,
    shellNotChosen: 'semicojinete sin elegir',
    fitted: { fitted: 'montado', next: 'siguiente por montar', 'not-fitted': 'sin montar' },
    thrust: ({ saddle }) => `Arandelas de empuje en el apoyo ${saddle}`,
    bead: ({ name, isLaid }) => `${name}: ${isLaid ? 'aplicado' : 'por aplicar'}`,
    keepOut: ({ name }) => `${name}: sin sellador`,
    passage: ({ name }) => `Conducto de aceite, ${name}`,
    dowel: ({ number }) => `Pasador de centrado ${number}`,
    bore: ({ number }) => `Cilindro ${number}`,
    journal: ({ id }) => `Muñón de bancada ${id}`,
    pin: ({ rods, stands }) => `Muñequilla de ${rods.join(' y ')}: ${stands}`,
    wheels: {
      gear: 'Engranaje del cigüeñal',
      chain: 'Rueda de cadena del cigüeñal',
      belt: 'Polea de correa del cigüeñal',
    },
    facePart: ({ kind, name }) => `${faceParts[kind]}, ${name}`,
    gasket: 'Junta a lo largo del borde de la cara',
    opening: ({ number }) => `Hueco ${number}`,
    withNotes: ({ text, notes }) => [text, ...notes].join('; '),
  },

  protractor: ({ start, startClock, end, endClock, turned, sense }) =>
    `Transportador: el mango empieza en ${start} (${oClock(startClock)}) y llega a ${end} ` +
    `(${oClock(endClock)}) tras ${turned}, en sentido ${sense === 'clockwise' ? 'horario' : 'antihorario'}.`,
}

/** `a las 3 en punto`, `a la 1 en punto`, as on a clock's face. */
const oClock = (hour: number) => (hour === 1 ? 'a la 1' : `a las ${hour}`)
