import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { replay } from '../../../../core/builds/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { sceneOf } from '../../../../core/layout/index.ts'
import {
  faultDrill,
  finishedFacts,
  withCapArrows,
  type FaultyBuild,
} from '../../../../core/practice/index.ts'
import { en } from '../../../../core/words/index.ts'

export const person = 'N. Aas'

export function buildOf(spec: EngineSpec, kind: FaultyBuild['fault']['kind']): FaultyBuild {
  for (let round = 0; round < 40; round += 1) {
    const found = faultDrill(spec, `round ${round}`, person)!.builds.find(({ fault }) => fault.kind === kind)
    if (found) return found
  }
  throw new Error(`no build of ${spec.id} with ${kind}`)
}

interface Written {
  readonly fits: readonly {
    readonly id: string
    readonly positions: readonly string[]
    readonly grades: readonly { readonly grade: string }[]
    readonly mixing: { readonly thicker?: string }
    readonly chart?: readonly {
      readonly housing: string
      readonly journal: string
      readonly positions?: readonly string[]
      readonly upper: string
      readonly lower: string
    }[]
  }[]
}

/**
 * What of a build is not as the spec wants it, each as the parts that show it: counted from the entries and the spec's numbers,
 * without the program's own way to any of them.
 */
export function differences(spec: EngineSpec, build: FaultyBuild): readonly (readonly string[])[] {
  return [
    ...missedIn(spec, build),
    ...misplacedIn(spec, build),
    ...coveredIn(build),
    ...turnedIn(build),
    ...linedIn(spec, build),
  ]
}

function missedIn(spec: EngineSpec, { entries }: FaultyBuild): readonly (readonly string[])[] {
  const made = new Set(
    entries.flatMap(({ event }) =>
      event.type === 'fastener-pulled' ? [`${event.procedure} ${event.pass} ${event.fastener}`] : [],
    ),
  )
  return spec.procedures.flatMap(({ id, orders, passes }) =>
    passes.flatMap((pass, index) => {
      if (!('order' in pass)) return []
      const sequence = orders.find((order) => order.id === pass.order)!.sequence
      const only = pass.kind === 'recheck' ? pass.only : undefined
      const wanted = only ? sequence.filter((each) => only.includes(each)) : sequence
      return wanted
        .filter((fastener) => !made.has(`${id} ${index} ${fastener}`))
        .map((fastener) => [`fastener/${fastener}`])
    }),
  )
}

/** Two bearings with each other's shells are one difference. The chart is read from the file. */
function misplacedIn(spec: EngineSpec, { entries }: FaultyBuild): readonly (readonly string[])[] {
  const file = join(import.meta.dirname, '../../../../specs', `${spec.id}.json`)
  const written = spec.fits.length === 0 ? { fits: [] } : (JSON.parse(readFileSync(file, 'utf8')) as Written)
  const marks = new Map<string, string | null>()
  const grades = new Map<string, string>()
  for (const { event } of entries) {
    if (event.type === 'marks-noted') {
      const { positions } = spec.fits.find(({ id }) => id === event.fit)!
      positions.forEach((position, at) =>
        marks.set(`${event.fit} ${event.part} ${position}`, event.marks[at] ?? null),
      )
    }
    if (event.type === 'shells-chosen')
      for (const { position, half, grade } of event.choices)
        grades.set(`${event.fit} ${position} ${half}`, grade)
  }
  const wrong = written.fits.flatMap(({ id, positions, chart = [] }) =>
    positions.flatMap((position) => {
      const cells = chart.filter(
        (cell) =>
          cell.housing === marks.get(`${id} housing ${position}`) &&
          cell.journal === marks.get(`${id} journal ${position}`),
      )
      const cell =
        cells.find((each) => each.positions?.includes(position)) ?? cells.find((each) => !each.positions)
      if (!cell) return []
      const lying = [grades.get(`${id} ${position} upper`), grades.get(`${id} ${position} lower`)]
      const wanted = [cell.upper, cell.lower]
      // Which of two takes the thicker wall is a rule beside the chart: it is enough that both are there.
      return lying.toSorted().join() === wanted.toSorted().join() ? [] : [position]
    }),
  )
  if (wrong.length === 0) return []
  if (wrong.length !== 2) return wrong.map((position) => [`half/${position}/upper`])
  return [wrong.flatMap((position) => [`half/${position}/upper`, `half/${position}/lower`])]
}

/** The caps whose arrows do not point to the nose, which is at the left. */
function turnedIn({ spec, fault }: FaultyBuild): readonly (readonly string[])[] {
  const turned = fault.kind === 'cap-turned' ? fault.bearing : null
  return arrowsOf(spec, turned, 'below')
    .filter(({ way }) => way > 0)
    .map(({ id }) => [`half/${id}/upper`])
}

/** Which way the arrow of each cap is drawn: below 0 to the left. */
export function arrowsOf(spec: EngineSpec, turned: string | null, from: 'above' | 'below') {
  const face = spec.case.faces.find(({ shows }) => shows === 'saddles')!
  const view = { from, turn: 0 } as const
  const sheet = { widthPx: 900, heightPx: 620, capitalPx: 14 }
  const bare = sceneOf(en, spec, finishedFacts(en, spec, replay([]), face.id), view, sheet)
  const px = bare.frame.width / 900
  const { shapes } = withCapArrows(en, spec, bare, { face, view, px, turned })
  return shapes.flatMap((shape) => {
    const [, id] = /^cap\/(.*)\/arrow$/.exec(shape.id) ?? []
    if (shape.kind !== 'line' || id === undefined) return []
    const [tip = 0, , base = 0] = shape.points
    return [{ id, way: Math.sign(tip - base) }]
  })
}

/** Points every tenth of a millimetre along the bead against the rectangle of each oil way. */
function coveredIn({ spec }: FaultyBuild): readonly (readonly string[])[] {
  return spec.beads.flatMap(({ id, face, path, closed, width }) =>
    spec.case.oilPassages
      .filter((passage) => passage.face === face)
      .flatMap((passage) => {
        const corners = closed ? [...path, path[0]!] : path
        const covers = corners.slice(1).some(([toX, toY], index) => {
          const [fromX, fromY] = corners[index]!
          const steps = Math.ceil(Math.hypot(toX - fromX, toY - fromY) / 1e5) + 1
          return Array.from({ length: steps + 1 }, (_, step) => step / steps).some((share) => {
            const [x, y] = [fromX + (toX - fromX) * share, fromY + (toY - fromY) * share]
            const off = (value: number, middle: number, size: number) =>
              Math.max(0, Math.abs(value - middle) - size / 2)
            const apart = Math.hypot(
              off(x, passage.at[0], passage.size[0]),
              off(y, passage.at[1], passage.size[1]),
            )
            return apart < width / 2 - 1e5
          })
        })
        return covers ? [[`bead/${id}`, `oil-passage/${passage.id}`]] : []
      }),
  )
}

/** Rings that follow each other, an expander left out or not, whose gaps stand less than 60 degrees apart: from the entries alone. */
function linedIn({ ringSets }: EngineSpec, { entries }: FaultyBuild): readonly (readonly string[])[] {
  return entries.flatMap(({ event }) => {
    if (event.type !== 'rings-fitted') return []
    const set = ringSets.find(({ pistons }) => pistons.some(({ cylinder }) => cylinder === event.cylinder))!
    const without = (kind: string) => event.gaps.filter((_, at) => set.rings[at]!.kind !== kind)
    const pairs = [without('none'), without('expander')].flatMap((gaps) =>
      gaps.slice(1).map((gap, at) => [gaps[at]!, gap] as const),
    )
    const lined = pairs.filter(([one, other]) => {
      const apart = Math.abs(one.degrees - other.degrees)
      return Math.min(apart, 360 - apart) < 60
    })
    return [
      ...new Set(lined.map((pair) => pair.map(({ ring }) => `ring/${event.cylinder}/${ring}`).join())),
    ].map((parts) => parts.split(','))
  })
}
