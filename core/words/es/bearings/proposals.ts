import type { Words } from '../../words.ts'
import { pairText } from '../halves.ts'

const nearestOf = (of: number) =>
  `La más cercana al valor nominal de las ${of} parejas admitidas que quedan dentro de límites`

export const proposals: Words['proposals'] = {
  'by-chart': ({ housing, journal }) =>
    `La tabla da este para la marca de alojamiento ${housing} y la marca de muñón ${journal}.`,
  'by-bands': ({ of, housing, journal }) =>
    `${nearestOf(of)} con la marca de alojamiento ${housing} y la marca de muñón ${journal}.`,
  'by-readings': ({ of }) => `${nearestOf(of)} con el menor alojamiento y el mayor muñón medidos.`,
  'halves-differ': (pair) => `Las mitades son distintas: ${pairText(pair)}.`,
  'allowed-beside-pinned': () => 'Admitido junto a la mitad elegida a mano; no se conoce la holgura.',
  'nearest-beside-pinned': () =>
    'La más cercana al valor nominal de las parejas admitidas con la mitad elegida a mano.',
  'in-tray': ({ label }) => `En la bandeja: ${label}.`,
  'not-in-tray': () => 'No está en la bandeja: por pedir.',
  'nearest-of-all': () => 'Contando todos los cojinetes a la vez, es lo más cercano al valor nominal.',
  'nearest-of-tried': () =>
    'Contando todos los cojinetes a la vez, es lo más cercano al valor nominal de lo probado; hay demasiados semicojinetes sueltos para ' +
    'probarlo todo.',
}
