import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sceneOf, type DrawingFacts, type Sheet } from '../../../core/layout/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import { anyEngine } from './any-engine.ts'
import { demos, factsAt, stages, views, type Stage } from './demos.ts'
import { calloutCorner, findings, look, lookAtSizes, rules, type Findings, type Rule } from './rules.ts'
import { isLong, runs } from '../../runs.ts'
import { en } from '../../../core/words/index.ts'

/** The drawing's part of windows of 1024 × 768, 1280 × 800, 1366 × 768, 1920 × 1080, of half of a tall one, and at 200 % zoom. */
const windows = [
  { widthPx: 600, heightPx: 430 },
  { widthPx: 842, heightPx: 480 },
  { widthPx: 920, heightPx: 470 },
  { widthPx: 1400, heightPx: 760 },
  { widthPx: 680, heightPx: 380 },
  { widthPx: 645, heightPx: 371 },
]
const engines = runs(300, 500)
/** What is next has these capitals from ½, 1 and 2 m. */
const sheets: readonly Sheet[] = windows.map((window, index) => ({
  ...window,
  capitalPx: [12, 18, 18, 44, 18, 12][index]!,
}))

/** Stages and rules in which sizes are compared with those of the sheet. */
const sized: readonly Stage[] = ['first pull', 'mid run']
const ofSizes: readonly Rule[] = [
  'the sheet taken by the case',
  'discs as large as their neighbours let them be',
]

/** The same drawing when another fastener of the face is next. */
function withAnotherNext(spec: EngineSpec, facts: DrawingFacts): DrawingFacts {
  const here = spec.fasteners.filter(({ face }) => face === facts.face)
  const next = here.find(({ id }) => facts.fasteners[id]?.state === 'next')
  const other = here.at(-1)
  if (next === undefined || other === undefined || next === other) return facts
  const fasteners = {
    ...facts.fasteners,
    [next.id]: { number: next.number, state: 'waiting', share: 0 },
    [other.id]: { number: other.number, state: 'next', share: 0 },
  } as const
  return { ...facts, fasteners, callout: 'loosen', path: { from: next.id, to: other.id } }
}

function lookAt(
  spec: EngineSpec,
  face: string,
  stage: Stage,
  view: (typeof views)[number],
  sheet: Sheet,
  into: Findings,
) {
  const facts = factsAt(spec, face, stage)
  const count = spec.fasteners.filter((fastener) => fastener.face === face).length
  const where = `${spec.id} ${face}, ${stage}, from ${view.from}, turn ${view.turn}, ${sheet.widthPx} px, capitals ${sheet.capitalPx} px`
  const scene = sceneOf(en, spec, facts, view, sheet)
  look(scene, sheet, count, where, into)
  if (demos.includes(spec) && sized.includes(stage)) lookAtSizes(scene, sheet, where, into)
  const corner = calloutCorner(scene, sheet)
  if (corner === null) return
  const other = calloutCorner(sceneOf(en, spec, withAnotherNext(spec, facts), view, sheet), sheet)
  const rule = 'the callout in its place'
  into.looked.set(rule, into.looked.get(rule)! + 1)
  const isThere =
    Math.abs((other?.left ?? 0) - corner.left) < 0.5 && Math.abs((other?.top ?? 0) - corner.top) < 0.5
  if (!isThere || corner.left > 20) into.broken.get(rule)!.push(where)
}

function report({ looked, broken }: Findings) {
  return rules.map((rule) => ({
    rule,
    looked: looked.get(rule)!,
    broken: broken.get(rule)!.length,
    first: broken.get(rule)!.slice(0, 3),
  }))
}

/**
 * The long form has all; else each step has each view on one of the sheets, each view and each step every sheet, and the next face or
 * engine has them otherwise.
 */
function combinations(spec: EngineSpec) {
  return spec.case.faces.flatMap((face, faceAt) =>
    stages.flatMap((stage, stageAt) =>
      views.flatMap((view, viewAt) =>
        sheets
          .filter(
            (_, at) => isLong || (demos.indexOf(spec) + faceAt + stageAt + viewAt + at) % sheets.length === 0,
          )
          .map((sheet) => ({ face, stage, view, sheet })),
      ),
    ),
  )
}

/** So often at the least a rule was looked at on one engine, that of sizes less often. */
const [least, leastOfSizes] = isLong ? [100, 10] : [50, 5]

describe('the rules of the drawing', () => {
  it.each(demos)('hold on every face of $id, in each view, size and step', (spec) => {
    const found = findings()
    for (const { face, stage, view, sheet } of combinations(spec))
      lookAt(spec, face.id, stage, view, sheet, found)
    expect(report(found).filter(({ broken }) => broken > 0)).toEqual([])
    expect(
      report(found).filter(({ looked, rule }) => looked < (ofSizes.includes(rule) ? leastOfSizes : least)),
    ).toEqual([])
  })

  it(`hold on ${engines} engines of any size and family`, () => {
    const found = findings()
    fc.assert(
      fc.property(
        anyEngine,
        fc.constantFrom(...sheets),
        fc.constantFrom(...views),
        fc.constantFrom(...stages),
        (spec, sheet, view, stage) => lookAt(spec, 'joint', stage, view, sheet, found),
      ),
      { numRuns: engines, seed: 20261127 },
    )
    expect(report(found).filter(({ broken }) => broken > 0)).toEqual([])
    const always = report(found).filter(({ rule }) => !ofSizes.includes(rule))
    expect(always.filter(({ looked }) => looked < 100)).toEqual([])
  })
})
