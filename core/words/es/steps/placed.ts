import type { OfWork } from '../../en/steps/placed.ts'
import type { Words } from '../../words.ts'

const title = ({ at, round }: OfWork) => (round === 2 ? `${at}, otra vez` : at)

export const placed: Words['placed'] = {
  title,
  done: {
    lubricate: ({ dry }) => (dry ? 'Está seco' : 'Está aceitado'),
    clean: 'Está limpio',
    orient: 'Está colocado así',
    align: 'Las marcas coinciden',
    'fit-places': 'Está montado',
    note: 'Anotarlo',
  },
  turn: ({ turns }) =>
    `Ahora girar el cigüeñal ${turns} ${turns === 1 ? 'vuelta completa' : 'vueltas completas'}. Las marcas deben coincidir de nuevo.`,
  heat: ({ temperature }) =>
    `! Pieza caliente: ${temperature}. Comprobar su temperatura antes de meter el bulón.`,
  write: 'Qué hay',
  places: 'Todos los puntos',
  read: ({ done, note, ...work }) => `${done ? '✓ ' : ''}${title(work)}${note === null ? '' : `: ${note}`}`,
  allDone: ({ places }) => (places === 1 ? '✓ Está hecho.' : `✓ Los ${places} puntos están hechos.`),
  undo: 'Deshacer uno …',
  undoWhich: ({ at }) => `${at}: ¿por qué no vale?`,
  undoIt: 'Hacerlo de nuevo',
  pictures: {
    oil: 'Una gota de aceite en la superficie del cojinete.',
    dry: 'Una gota de aceite tachada: aquí, sin aceite.',
    'oil-way': 'Se sopla aire por un conducto de aceite de un extremo al otro.',
    face: 'Un trapo recorre toda la cara de unión.',
    plug: 'Un tapón roscado en el extremo de un conducto de aceite.',
    'piston-front': 'Un pistón desde arriba, con la flecha hacia delante, a la izquierda.',
    'rod-side': 'Una biela en su muñequilla, vista desde delante: el lado con la marca mira al observador.',
    'cap-numbers': 'Una biela y su sombrerete con el mismo número en el mismo lado.',
    'washer-grooves': 'Una arandela de empuje junto a su apoyo, con las ranuras de aceite hacia el cigüeñal.',
    'seal-lip': 'Un retén cortado en su alojamiento: hacia dónde mira su labio y a qué profundidad queda.',
    'two-piece-seal': 'Las dos mitades de un retén con sellador en las puntas, y el labio cortado.',
    'core-plug': 'Un tapón cortado en su agujero, y a qué profundidad queda.',
    'check-valve': 'Una válvula antirretorno cortada: el sentido en que el aceite levanta su bola.',
    strainer: 'Un colador visto por su malla.',
    'circlip-gap': 'Un anillo de retención en su ranura, con la abertura apartada de la muesca.',
    'circlip-seated':
      'Un pistón cortado por el bulón: el anillo de retención está en su ranura en todo el contorno, por fuera del extremo del bulón.',
    'pin-offset': 'Un pistón desde delante: su bulón está a un lado del centro.',
    'piston-heated':
      'Un pistón en una placa caliente, con un termómetro; el bulón entra mientras está caliente.',
    'timing-marks': 'Dos ruedas cuyas marcas coinciden en la línea entre sus centros.',
    'chain-link': 'Una cadena en su rueda: el eslabón brillante está sobre el punto.',
    'mark-at-line': 'Una rueda cuya marca está frente a una línea a su lado.',
    'wheel-on-key': 'Una rueda en su eje, con la chaveta asentada en la ranura.',
    'ring-heated': 'Un anillo en una placa caliente, con un termómetro.',
    'ring-in-groove':
      'Un rodamiento cortado en su alojamiento: el anillo que lo rodea está en la ranura del cárter.',
    'oil-jet': 'Una boquilla bajo su pistón: el chorro da en la parte inferior de la cabeza.',
    'flat-side': 'Una pieza redonda desde su extremo: hacia dónde queda su cara plana.',
    'drive-slot': 'La ranura de un accionamiento desde su extremo: queda al lado del centro.',
    'crank-pressed': 'Un cigüeñal prensado: un brazo entra en la muñequilla.',
    writing: 'Una placa con texto.',
  },
  sheet: {
    title: 'Hecho punto por punto',
    place: 'Punto',
    what: 'Qué',
    undone: ({ reason }) => `No valía: ${reason}`,
  },
}
