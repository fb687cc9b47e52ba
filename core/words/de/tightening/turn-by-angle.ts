import type { Words } from '../../words.ts'
import { plain } from '../formats.ts'

type Turn = Words['run']['angle']

const flats: Turn['flats'] = (turn) => {
  if ('decimal' in turn) return `${plain(turn.decimal)} Schlüsselflächen`
  const { whole, part } = turn
  const all = `${whole} ${whole === 1 ? 'Schlüsselfläche' : 'Schlüsselflächen'}`
  if (part === null) return all
  return whole === 0 ? `${part.count}/${part.of} Schlüsselfläche` : `${all} und ${part.count}/${part.of}`
}

export const turnByAngle: Turn = {
  title: 'Drehwinkel',
  flats,
  fromTo: (facts) => [
    `${facts.flats}. Griff von `,
    { strong: facts.start },
    ' bis ',
    { strong: facts.end },
    `, zulässig ${facts.least} bis ${facts.most}.`,
  ],
  reached: ({ angle }) => `Erreicht: ${angle}.`,
  anticlockwise: ': Griff gegen den Uhrzeigersinn',
  clockwise: ': Griff im Uhrzeigersinn',
  room: 'Platz',
  free: 'frei',
  with: 'Mit',
  grips: { ratchet: 'Ratsche', hexagon: 'Sechskant', 'bi-hexagon': 'Zwölfkant' },
  swings: 'Hübe',
}
