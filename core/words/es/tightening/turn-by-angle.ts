import type { turnByAngle as english } from '../../en/tightening/turn-by-angle.ts'
import { plain } from '../formats.ts'

function flats(turn: Parameters<typeof english.flats>[0]): string {
  if ('decimal' in turn) return `${plain(turn.decimal)} caras`
  const { whole, part } = turn
  const all = `${whole} ${whole === 1 ? 'cara' : 'caras'}`
  if (part === null) return all
  return whole === 0 ? `${part.count}/${part.of} de cara` : `${all} y ${part.count}/${part.of}`
}

export const turnByAngle: typeof english = {
  title: 'Ángulo de apriete',
  flats,
  fromTo: ({ flats: byFlats, start, end, least, most }) => [
    `${byFlats}. Mango de `,
    { strong: start },
    ' a ',
    { strong: end },
    `, correcto entre ${least} y ${most}.`,
  ],
  reached: ({ angle }) => `Alcanzado: ${angle}.`,
  anticlockwise: ': mango en sentido antihorario',
  clockwise: ': mango en sentido horario',
  room: 'Recorrido',
  free: 'libre',
  with: 'Con',
  grips: { ratchet: 'carraca', hexagon: 'hexagonal', 'bi-hexagon': 'bihexagonal' },
  swings: 'Tramos',
}
