import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { patterns } from '../window/parts.ts'

const toOrder = 'por pedir'
const halves = { ...engineParts.halves, ...engineParts.either }

export const tray: Words['tray'] = {
  title: ({ number }) => `Pedido y etiquetas ${number}`,
  foot: ({ number }) => `Pedido y etiquetas Bedplate ${number}`,
  orderCsv: 'Lista de pedido en CSV',
  labelsCsv: 'Etiquetas en CSV',
  of: ({ engine, name, serial }) => `${engine}, ${name}${serial ? `, número de serie ${serial}` : ''}.`,
  demo: 'DEMO: números inventados. No montar nunca un motor real con ellos.',
  labels: 'Etiquetas de la bandeja',

  order: {
    title: 'Semicojinetes por pedir',
    of: ({ fit, from, open }) =>
      `${fit}: ${
        from === 'no-tray'
          ? 'no se contó ninguna bandeja, así que figuran todos'
          : 'lo que falta en la bandeja'
      }${open.length > 0 ? `; aún abierto: ${open.join(', ')}` : ''}.`,
    nothing: 'No hay que pedir nada.',
    fit: 'Cojinetes',
    grade: 'Clase',
    size: 'Medida',
    half: 'Mitad',
    count: 'Cantidad',
    for: 'Para',
    halves,
  },

  label: {
    half: ({ position, half }) => `${position} ${halves[half]}`,
    grade: ({ grade, pattern, undersize }) => [
      'Clase ',
      { strong: grade },
      `, ${patterns[pattern]}${undersize ? `, ${undersize}` : ''}`,
    ],
    noClearance: 'holgura sin calcular',
    from: ({ place }) => `de: ${place ?? toOrder}`,
    toOrder,
    build: ({ number, demo }) => `${number}${demo ? ' · DEMO' : ''}`,
  },
}
