import { drawingFacts, faceOfStep } from '../../core/builds/index.ts'
import { bareFacts } from '../../core/layout/index.ts'
import type { StepKind } from '../../core/engine/index.ts'
import Drawing from './Drawing.svelte'
import type { DrawnFace } from './drawn-face.ts'
import { engines, specIn } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import { momentsOf } from './moments.ts'

/** Steps that change what is drawn. */
const drawn: ReadonlySet<StepKind> = new Set(['choose-shells', 'fit-shells', 'lay-bead', 'run-procedure'])

/** Every joint face of every demo engine: bare, and at each moment of a build that it shows. */
export const drawingEntries: readonly Entry[] = engines.flatMap((engine) => {
  const drawing = entriesOf(`Drawings of ${engine.spec.name}`, 'drawing')
  return engine.spec.case.faces.map((bareFace) =>
    drawing(bareFace.name, `${bareFace.name}, worked on from ${bareFace.workedFrom}`, Drawing, (shown) => {
      const { words, language } = shown.language
      const spec = specIn(engine, language)
      const face = spec.case.faces.find(({ id }) => id === bareFace.id)!
      const moments = momentsOf(engine).filter(
        ({ step }) => drawn.has(step.kind) && faceOfStep(spec, step) === face.id,
      )
      return Object.fromEntries<DrawnFace>([
        ['bare', { spec, face, facts: bareFacts(face.id), at: null, shown }],
        ...moments.map(({ step, name, build: { state } }): [string, DrawnFace] => {
          const facts = drawingFacts(words, spec, state, step)
          return [`${step.name}: ${name}`, { spec, face, facts, at: { state, step }, shown }]
        }),
      ])
    }),
  )
})
