import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type {
  BeadState,
  BearingFact,
  DrawingFacts,
  DrawingSubject,
  FastenerFact,
  Sheet,
  View,
} from '../../../core/layout/index.ts'
import { readSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { engineFile } from '../../engine-files.ts'

const folder = join(import.meta.dirname, '../../../specs')

/** Every engine that ships. */
export const demos: readonly EngineSpec[] = globSync('*.json', { cwd: folder })
  .sort()
  .map((file) => {
    const read = readSpec(readFileSync(join(folder, file), 'utf8'))
    if (!read.ok) throw new Error(`${file} cannot be read`)
    return read.spec
  })

const known = new Map<string, EngineSpec>()

/** One of them; two of them with short plans. */
export function demo(id: string): EngineSpec {
  const before = known.get(id)
  if (before !== undefined) return before
  const read = readSpec(readFileSync(engineFile(id), 'utf8'))
  if (!read.ok) throw new Error(`${id} cannot be read`)
  known.set(id, read.spec)
  return read.spec
}

export const views: readonly View[] = (['above', 'below'] as const).flatMap((from) =>
  ([0, 1, 2, 3] as const).map((turn) => ({ from, turn })),
)

/** The drawing areas of a window of 1366 × 768 and of one of 1920 × 1080, read at arm's length and from two metres. */
export const sheets: readonly Sheet[] = [
  { widthPx: 940, heightPx: 700, capitalPx: 12 },
  { widthPx: 1400, heightPx: 950, capitalPx: 14 },
  { widthPx: 1400, heightPx: 950, capitalPx: 44 },
]

/**
 * How far a build has come, and what the drawing is about then: nothing chosen, shells being fitted, a bead to lay, the
 * first pull, a pull in the middle of a run, a flag to answer, a check; and, with all that is on the face, every state of a
 * fastener at once.
 */
const subjects = {
  bare: 'everything',
  fitting: 'shells',
  bead: 'bead',
  'first pull': 'tightening',
  'mid run': 'tightening',
  flag: 'tightening',
  check: 'check',
  'under way': 'everything',
} as const satisfies Readonly<Record<string, DrawingSubject>>
export type Stage = keyof typeof subjects
export const stages = Object.keys(subjects) as readonly Stage[]
/** Those in which a fastener is next. */
const pulls: readonly Stage[] = ['first pull', 'mid run', 'flag', 'under way']

export function factsAt(spec: EngineSpec, face: string, stage: Stage): DrawingFacts {
  const here = spec.fasteners.filter((fastener) => fastener.face === face)
  const pulling = pulls.includes(stage)
  const next = pulling && stage !== 'first pull' ? Math.min(5, here.length - 1) : 0
  const fasteners = here.map(({ id, number }, index): readonly [string, FastenerFact] => [
    id,
    { number, ...stateAt(stage, index, next) },
  ])
  const from = here[next - 1]
  const to = here[next]
  const half = stage === 'fitting' ? nextHalf(spec, face) : null
  const [thrust] = spec.case.saddles.filter((saddle) => saddle.thrust)
  const flagged = stage === 'flag' && from !== undefined ? `fastener/${from.id}` : null
  return {
    face,
    subject: subjects[stage],
    bearings: stage === 'bare' ? {} : Object.fromEntries(bearingsAt(spec, stage)),
    fasteners: Object.fromEntries(fasteners),
    path: pulling && from !== undefined && to !== undefined ? { from: from.id, to: to.id } : null,
    nextHalf: half,
    checked: stage === 'check' && thrust !== undefined ? `thrust/${thrust.id}` : null,
    actOn: flagged,
    callout:
      flagged !== null
        ? 'reads 18 N·m, 22.8 to 25.2 N·m'
        : half !== null
          ? 'fit T'
          : pulling && to !== undefined
            ? '24 N·m'
            : null,
    notes: [],
    beads: Object.fromEntries(beadsAt(spec, face, stage)),
  }
}

/** Where the first bearing of the face is in already, the lower half of the second one is next. */
function nextHalf(spec: EngineSpec, face: string): string | null {
  const { saddles, rods, balanceBearings, faces } = spec.case
  const shown = { saddles, rods, balance: balanceBearings, flange: [] }
  const second = shown[faces.find(({ id }) => id === face)?.shows ?? 'flange'][1]
  return second === undefined ? null : `${second.id}/lower`
}

/** At their own stage all beads are laid but the last, which is to be laid. */
function beadsAt(spec: EngineSpec, face: string, stage: Stage): readonly (readonly [string, BeadState])[] {
  if (stage !== 'bead' && stage !== 'under way') return []
  const here = spec.beads.filter((bead) => bead.face === face)
  return here.map(({ id }, index) => [id, stage === 'bead' && index === here.length - 1 ? 'to-lay' : 'laid'])
}

function stateAt(stage: Stage, index: number, next: number): Pick<FastenerFact, 'state' | 'share'> {
  if (!pulls.includes(stage)) return { state: 'waiting', share: 0 }
  if (index === next) return { state: 'next', share: 0 }
  if (index === next + 1) return { state: 'after-next', share: 0 }
  if (stage === 'flag' && index === next - 1) return { state: 'flagged', share: 0.5 }
  if (index > next)
    return index % 3 === 2 && stage === 'under way'
      ? { state: 'flagged', share: 0.5 }
      : { state: 'waiting', share: 0 }
  return index < 2 ? { state: 'done', share: 1 } : { state: 'partly-done', share: 0.5 }
}

function bearingsAt(spec: EngineSpec, stage: Stage): readonly (readonly [string, BearingFact])[] {
  return spec.fits.flatMap(({ positions, grades }) =>
    positions.map((position, index): readonly [string, BearingFact] => {
      const half = (step: number) => {
        const { grade, colour, pattern } = grades[(index + step) % grades.length]!
        return { grade, colour, pattern, fitted: stage === 'under way' || index === 0 }
      }
      const withinLimits = !(stage === 'under way' && index === 1)
      return [position, { upper: half(0), lower: half(1), clearance: `${36 + index} µm`, withinLimits }]
    }),
  )
}
