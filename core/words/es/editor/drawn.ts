import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { drawnForms } from './drawn-forms.ts'

export const drawn: Words['editor']['drawn'] = {
  ...drawnForms,
  subject: 'Trabajar en',
  subjects: {
    parts: 'Fijaciones, agujeros',
    bearings: 'Cojinetes',
    outline: 'Contorno',
    beads: 'Cordones de sellador',
  },
  kinds: {
    'face-part': 'Retén, tapón, válvula, colador',
    saddle: 'Apoyo',
    rod: 'Biela',
    balance: 'Cojinete de equilibrado',
    corner: 'Vértice',
    'bead-point': 'Punto del cordón',
    'keep-out': 'Zona prohibida',
  },
  facePart: 'Pieza',
  faceParts: {
    seal: 'Retén',
    'two-piece-seal': 'Retén de dos piezas',
    plug: 'Tapón',
    'check-valve': 'Válvula antirretorno',
    strainer: 'Colador de aceite',
  },
  partName: 'Cómo se llama',
  lip: 'El labio mira',
  flow: 'El aceite fluye',
  ways: { inwards: 'hacia dentro', outwards: 'hacia fuera' },
  shaft: 'Eje',
  depth: 'Bajo la cara',
  noBearings:
    'En esta cara no hay cojinetes a la vista. Elegir una cara que muestre apoyos, bielas o cojinetes de equilibrado, o añadirla en «Caras».',
  onAxis:
    'Los cojinetes de bancada y las bielas están en el eje del cigüeñal: solo cuenta su lugar a lo largo.',
  snapped: {
    axis: 'en el eje',
    saddle: ({ name }) => `en el apoyo ${name}`,
    edge: 'en el borde',
    thing: ({ name }) => `alineado con ${name}`,
    mirror: ({ name }) => `frente a ${name}`,
  },
  listed: {
    chosen: 'elegido',
    inOrder: ({ place }) => `puesto ${place} del orden`,
  },
  handles: {
    corner: ({ number }) => `vértice ${number}`,
    beadPoint: ({ bead, number }) => `${bead}, punto ${number}`,
    bearing: ({ kind, id }) =>
      ({ saddle: `apoyo ${id}`, rod: `biela ${id}`, balance: `cojinete de equilibrado ${id}` })[kind],
  },
  path: {
    grown: 'Esta cara no tiene contorno propio: su borde crece alrededor de lo que hay en ella.',
    again: 'Dibujar de nuevo el contorno',
    addCorner: 'Tocar el borde añade ahí un vértice; arrastrar un vértice lo mueve.',
    drop: 'Dejar sin contorno',
    tapOn: 'Tocar punto por punto en el dibujo, o escribir cada uno.',
    soFar: ({ count, least }) =>
      count < least
        ? `${counted(count, 'punto', 'puntos')}; en la ficha a partir de ${least}.`
        : `${counted(count, 'punto', 'puntos')}, en la ficha.`,
    takeBack: 'Retirar el último punto',
    finish: 'Terminar',
    addPoint: 'Añadir este punto',
  },
  beads: {
    which: 'Cordón',
    new: 'Cordón nuevo',
    none: 'Esta cara aún no tiene cordones.',
    begin: 'Dibujarlo',
    width: 'Ancho del cordón',
    sealant: 'Sellador',
    openTime: 'Tiempo abierto, min',
    form: 'Su recorrido',
    forms: { open: 'abierto', closed: 'cerrado' },
    addPoint: 'Tocar junto al cordón añade ahí un punto; arrastrar un punto lo mueve.',
  },
}
