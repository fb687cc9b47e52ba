import { drawingFacts, faceOfStep, type BuildState } from '../../core/builds/index.ts'
import { bareFacts, type DrawingFacts } from '../../core/layout/index.ts'
import type { EngineSpec, Face, Step, StepKind } from '../../core/engine/index.ts'
import Drawing from './Drawing.svelte'
import { engines } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import { momentsOf } from './moments.ts'
import type { Shown } from './shown.ts'

/** A joint face as it is to be drawn. */
export interface Drawn {
  readonly spec: EngineSpec
  readonly face: Face
  readonly facts: DrawingFacts
  /** Where a build stands and what is done in it, for the protractor; null for the bare case. */
  readonly at: { readonly state: BuildState; readonly step: Step } | null
  readonly shown: Shown
}

/** Steps that change what is drawn. */
const drawn: ReadonlySet<StepKind> = new Set(['choose-shells', 'fit-shells', 'lay-bead', 'run-procedure'])

/** Every joint face of every demo engine: bare, and at each moment of a build that it shows. */
export const drawingEntries: readonly Entry[] = engines.flatMap((engine) => {
  const { spec } = engine
  const drawing = entriesOf(`Drawings of ${spec.name}`, 'drawing')
  return spec.case.faces.map((face) =>
    drawing(face.name, `${face.name}, worked on from ${face.workedFrom}`, Drawing, (shown) => {
      const moments = momentsOf(engine).filter(
        ({ step }) => drawn.has(step.kind) && faceOfStep(spec, step) === face.id,
      )
      return Object.fromEntries<Drawn>([
        ['bare', { spec, face, facts: bareFacts(face.id), at: null, shown }],
        ...moments.map(({ step, name, build: { state } }): [string, Drawn] => {
          const facts = drawingFacts(spec, state, step)
          return [`${step.name}: ${name}`, { spec, face, facts, at: { state, step }, shown }]
        }),
      ])
    }),
  )
})
