import { readFileSync } from 'node:fs'
import { bareFacts, type DrawingFacts, type FastenerFact } from '../../../core/layout/index.ts'
import { millimetres } from '../../../core/quantity/index.ts'
import { readSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { engineFile } from '../../engine-files.ts'

/** A demo engine's case joint with many fasteners in rows, as no engine has them. */
export function manyFasteners(count: number): EngineSpec {
  const read = readSpec(readFileSync(engineFile('skerry-3'), 'utf8'))
  if (!read.ok) throw new Error('the demo spec cannot be read')
  const [first] = read.spec.fasteners
  if (first === undefined) throw new Error('the demo spec has no fasteners')
  const columns = Math.ceil(Math.sqrt(count * 2))
  const rows = Math.ceil(count / columns)
  const fasteners = Array.from({ length: count }, (_, index) => {
    const x = 12 + ((index % columns) * 368) / (columns - 1)
    const y = -92 + (Math.floor(index / columns) * 184) / Math.max(rows - 1, 1)
    const at: [ReturnType<typeof millimetres>, ReturnType<typeof millimetres>] = [
      millimetres(x),
      millimetres(y),
    ]
    return { ...first, id: `f${index + 1}`, number: String((index + 1) % 1000), at }
  })
  return { ...read.spec, fasteners }
}

/** In the middle of a pass: so many done, the next one pointed at. */
export function factsAt(spec: EngineSpec, done: number): DrawingFacts {
  const ids = spec.fasteners.map(({ id }) => id)
  const states = ids.map((id, index): readonly [string, FastenerFact] => {
    const number = spec.fasteners[index]?.number ?? ''
    const state =
      index < done ? 'done' : index === done ? 'next' : index === done + 1 ? 'after-next' : 'waiting'
    return [id, { number, state, share: index < done ? 1 : 0 }]
  })
  const from = ids[done - 1]
  const to = ids[done]
  return {
    ...bareFacts('joint'),
    fasteners: Object.fromEntries(states),
    path: from === undefined || to === undefined ? null : { from, to },
    callout: '24 N·m',
    beads: Object.fromEntries(spec.beads.map(({ id }) => [id, 'laid' as const])),
  }
}
