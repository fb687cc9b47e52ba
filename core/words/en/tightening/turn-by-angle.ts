import type { RichText } from '../../rich.ts'

/** A turn by the flats of the head: whole ones and a part of one, or in tenths. */
type Flats =
  | { readonly whole: number; readonly part: { readonly count: number; readonly of: number } | null }
  | { readonly decimal: number }

function flats(turn: Flats): string {
  if ('decimal' in turn) return `${turn.decimal} flats`
  const { whole, part } = turn
  const all = `${whole} ${whole === 1 ? 'flat' : 'flats'}`
  if (part === null) return all
  return whole === 0 ? `${part.count}/${part.of} of a flat` : `${all} and ${part.count}/${part.of}`
}

/** A turn by an angle, with the handle on the drawing. */
export const turnByAngle = {
  title: 'Angle to turn',
  /** `1 flat and 2/3`, `2/3 of a flat`, `1.6 flats`. */
  flats,
  fromTo: (facts: {
    /** The same angle by the flats of the head. */
    readonly flats: string
    readonly start: string
    readonly end: string
    readonly least: string
    readonly most: string
  }): RichText => [
    `${facts.flats}. Handle from `,
    { strong: facts.start },
    ' to ',
    { strong: facts.end },
    `, right between ${facts.least} and ${facts.most}.`,
  ],
  reached: ({ angle }: { readonly angle: string }) => `Reached: ${angle}.`,
  anticlockwise: ': handle anticlockwise',
  clockwise: ': handle clockwise',
  room: 'Room',
  free: 'free',
  with: 'With',
  grips: { ratchet: 'ratchet', hexagon: 'hexagon', 'bi-hexagon': 'bi-hexagon' },
  swings: 'Swings',
}
