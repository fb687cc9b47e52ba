import { inMillimetres } from '../../quantity/index.ts'
import type { Counterweight, Crank, CrankThrow, EngineSpec, Rod } from '../../engine/index.ts'
import type { Point } from '../../plane/index.ts'

/** A round piece looked at along the crank, in mm from its axis: `y` across, `z` over it. */
export interface RoundPiece {
  readonly y: number
  readonly z: number
  readonly radius: number
}

/** A piece of the crank in mm of the engine's own frame: along it, and the rounds that it is made of across it. */
export interface Piece {
  readonly id: string
  readonly kind: 'journal' | 'pin' | 'web' | 'weight' | 'shaft' | 'wheel'
  /** What a tap on it is about; null for what has no name of its own. */
  readonly about: string | null
  readonly from: number
  readonly to: number
  /** Its silhouette along the crank is the hull of these. */
  readonly rounds: readonly RoundPiece[]
}

/** Room beside a saddle with thrust washers, for them, in mm: a web stands off so far where there is more between it and the saddle. */
const roomForWasher = 4.2
/** A web is so much wider than the journal that it grows out of. */
const beyondJournal = 1.14
/** A journal is so much thinner than its housing, where no band gives its size. */
const usualShare = 0.92
/** The shaft beyond the first and the last bearing, as a share of the journal beside it. */
const shaftShare = 0.8
/** A weight is made of rounds as thick as this share of its reach. */
const weightRim = 0.18
const roundsInWeight = 7

/**
 * The crank of a spec as pieces along it, from the nose on. Journals stand in their saddles and pins where their rods are; a web fills
 * what is between two of them. `ends` are those of the case, up to which its shaft is drawn. At an angle a pin stands off the axis by
 * throw × sin across and by throw × cos above it.
 */
export function piecesOf(
  spec: EngineSpec,
  crank: Crank,
  ends: { readonly from: number; readonly to: number },
): readonly Piece[] {
  const bearings = inOrder(spec, crank)
  const [first, last] = [bearings[0], bearings.at(-1)]
  if (first === undefined || last === undefined) return []
  const between = bearings.slice(1).flatMap((after, index) => betweenBearings(bearings[index]!, after))
  const webs = between.filter(({ kind }) => kind === 'web')
  return [
    ...shaftTo('nose', ends.from, first.from, first),
    ...shaftTo('drive', last.to, ends.to, last),
    ...bearings,
    ...between,
    ...crank.counterweights.flatMap((weight) => weightOf(crank, weight, webs)),
    ...crank.wheels.map(({ id, at, width, diameter }): Piece => {
      const [middle, half] = [inMillimetres(at), inMillimetres(width) / 2]
      const rounds = [{ y: 0, z: 0, radius: inMillimetres(diameter) / 2 }]
      return {
        id: `wheel/${id}`,
        kind: 'wheel',
        about: `wheel/${id}`,
        from: middle - half,
        to: middle + half,
        rounds,
      }
    }),
  ]
}

interface Bearing extends Piece {
  /** Of a pin, its throw; null of a main journal. */
  readonly throw: string | null
  readonly thrust: boolean
}

function inOrder(spec: EngineSpec, { throws, throwRadius }: Crank): readonly Bearing[] {
  const { saddles, rods } = spec.case
  const mains = saddles.map((saddle): Bearing => ({
    ...{ id: `journal/${saddle.id}`, kind: 'journal', about: `journal/${saddle.id}`, throw: null },
    ...{ ...along([saddle]), thrust: saddle.thrust },
    rounds: [{ y: 0, z: 0, radius: journalRadius(spec, saddle) }],
  }))
  const pins = throws.flatMap((one): readonly Bearing[] => {
    const own = rods.filter(({ id }) => one.rods.includes(id))
    if (own.length === 0) return []
    const radius = Math.max(...own.map((rod) => journalRadius(spec, rod)))
    return [
      {
        ...{ id: `pin/${one.id}`, kind: 'pin', about: `throw/${one.id}`, throw: one.id },
        ...{ ...along(own), thrust: false },
        rounds: [{ ...pinAt(one, inMillimetres(throwRadius)), radius }],
      },
    ]
  })
  return [...mains, ...pins].toSorted((a, b) => a.from - b.from)
}

/** Where a pin stands off the axis: across, and above it. */
export function pinAt(
  { angle }: Pick<CrankThrow, 'angle'>,
  radius: number,
): { readonly y: number; readonly z: number } {
  const turned = (angle * Math.PI) / 180
  return { y: radius * Math.sin(turned), z: radius * Math.cos(turned) }
}

function along(bearings: readonly Pick<Rod, 'at' | 'width'>[]): {
  readonly from: number
  readonly to: number
} {
  return {
    from: Math.min(...bearings.map(({ at, width }) => inMillimetres(at) - inMillimetres(width) / 2)),
    to: Math.max(...bearings.map(({ at, width }) => inMillimetres(at) + inMillimetres(width) / 2)),
  }
}

/** By the largest band of its fit, as far as its housing lets it. */
function journalRadius({ fits }: EngineSpec, { id, diameter }: Pick<Rod, 'id' | 'diameter'>): number {
  const housing = inMillimetres(diameter)
  const fit = fits.find(({ positions }) => positions.includes(id))
  const sizes =
    fit?.journal.marks.flatMap(({ band }) => (band === undefined ? [] : [inMillimetres(band.upTo)])) ?? []
  return (sizes.length === 0 ? housing * usualShare : Math.min(Math.max(...sizes), housing * 0.98)) / 2
}

/** The web between two bearings, or the shaft between two main journals, and what a thrust washer leaves free beside a saddle. */
function betweenBearings(before: Bearing, after: Bearing): readonly Piece[] {
  const gap = after.from - before.to
  if (gap <= 0.5) return []
  const free = (bearing: Bearing) => (bearing.thrust ? Math.min(roomForWasher, gap * 0.4) : 0)
  const [from, to] = [before.to + free(before), after.from - free(after)]
  const [one, other] = [before.rounds[0]!, after.rounds[0]!]
  const id = `${before.id}+${after.id}`
  const shaft = (from: number, to: number, { y, z, radius }: RoundPiece, which: string): readonly Piece[] =>
    to > from
      ? [{ id: `shaft/${id}${which}`, kind: 'shaft', about: null, from, to, rounds: [{ y, z, radius }] }]
      : []
  if (before.throw === null && after.throw === null)
    return shaft(before.to, after.from, one.radius < other.radius ? one : other, '')
  const about = `throw/${before.throw ?? after.throw}`
  const rounds = [one, other].map((round) => ({ ...round, radius: round.radius * beyondJournal }))
  return [
    ...shaft(before.to, from, one, '/before'),
    { id: `web/${id}`, kind: 'web', about, from, to, rounds },
    ...shaft(to, after.from, other, '/after'),
  ]
}

function weightOf(
  crank: Crank,
  { throw: id, side, radius, angle, spread }: Counterweight,
  webs: readonly Piece[],
): readonly Piece[] {
  const one = crank.throws.find((each) => each.id === id)
  const end = side === 'nose' ? `+pin/${id}` : `pin/${id}+`
  const web = webs.find((each) =>
    side === 'nose' ? each.id.endsWith(end) : each.id.startsWith(`web/${end}`),
  )
  if (one === undefined || web === undefined) return []
  const reach = inMillimetres(radius)
  const rim = reach * weightRim
  const middle = angle ?? one.angle + 180
  const rounds = Array.from({ length: roundsInWeight }, (_, step) => {
    const turned = middle + spread * (step / (roundsInWeight - 1) - 0.5)
    return { ...pinAt({ angle: turned as CrankThrow['angle'] }, reach - rim), radius: rim }
  })
  const hub = { y: 0, z: 0, radius: rim }
  const { from, to, about } = web
  return [{ id: `weight/${id}/${side}`, kind: 'weight', about, from, to, rounds: [hub, ...rounds] }]
}

function shaftTo(
  end: 'nose' | 'drive',
  from: number,
  to: number,
  { rounds: [round] }: Bearing,
): readonly Piece[] {
  const radius = (round?.radius ?? 0) * shaftShare
  return to - from <= 0.5
    ? []
    : [{ id: `shaft/${end}`, kind: 'shaft', about: null, from, to, rounds: [{ y: 0, z: 0, radius }] }]
}

/** How far a piece reaches across, as seen from above or below. */
export function acrossOf({ rounds }: Pick<Piece, 'rounds'>): {
  readonly least: number
  readonly most: number
} {
  return {
    least: Math.min(...rounds.map(({ y, radius }) => y - radius)),
    most: Math.max(...rounds.map(({ y, radius }) => y + radius)),
  }
}

/** The middle of a piece over the axis. */
export function heightOf({ rounds }: Pick<Piece, 'rounds'>): number {
  return rounds.reduce((sum, { z }) => sum + z, 0) / rounds.length
}

/** The hull of its rounds looked at along the crank, x across and y up, by Andrew's monotone chain. */
export function hullOf({ rounds }: Pick<Piece, 'rounds'>): readonly Point[] {
  const steps = 72
  const points = rounds.flatMap(({ y, z, radius }) =>
    Array.from({ length: steps }, (_, step) => {
      const turned = (step / steps) * 2 * Math.PI
      return { x: y + radius * Math.cos(turned), y: z + radius * Math.sin(turned) }
    }),
  )
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y)
  const half = (list: readonly Point[]): readonly Point[] =>
    list.reduce<Point[]>((chain, point) => {
      while (chain.length > 1 && turnsRight(chain.at(-2)!, chain.at(-1)!, point)) chain.pop()
      chain.push(point)
      return chain
    }, [])
  return [...half(sorted).slice(0, -1), ...half(sorted.toReversed()).slice(0, -1)]
}

function turnsRight(a: Point, b: Point, c: Point): boolean {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) <= 0
}
