import { drawingAfter, keepUnchanged, sceneOn } from '../../core/layout/index.ts'
import type { Drawing, Scene } from '../../core/layout/index.ts'
import type { Measure } from './measure.ts'
import { factsAt, manyFasteners } from './paint/scenes.ts'
import { en } from '../../core/words/index.ts'

const sheet = { widthPx: 1400, heightPx: 950, capitalPx: 12 }
const view = { from: 'below', turn: 0 } as const

function medianOf(values: number[]): number {
  return values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
}

/** What this thread has had of the processor: a machine that does other things at the time does not count. */
function processorMs(): number {
  const { user, system } = process.threadCpuUsage()
  return (user + system) / 1000
}

export const measures: readonly Measure[] = [
  {
    name: 'scene of 1,000 fasteners',
    bar: 'a scene in 5 ms of the processor after the one before it; only what a pull changes is new in the next one',
    take: () => {
      const spec = manyFasteners(1000)
      const drawing: number[] = []
      const keeping: number[] = []
      let scene: Scene | null = null
      let last: Drawing | null = null
      let most = 0
      for (let done = 0; done < 60; done += 1) {
        const facts = factsAt(spec, done)
        const from = processorMs()
        last = drawingAfter(last, en, spec, facts, view, sheet)
        const next = sceneOn(last)
        const drawn = processorMs()
        const kept = keepUnchanged(scene, next)
        keeping.push(processorMs() - drawn)
        drawing.push(drawn - from)
        const before = new Set(scene?.shapes)
        if (scene !== null) most = Math.max(most, kept.shapes.filter((shape) => !before.has(shape)).length)
        scene = kept
      }
      const sceneMs = medianOf(drawing.slice(10))
      return {
        values: {
          firstMs: drawing[0] ?? 0,
          sceneMs,
          keepMs: medianOf(keeping.slice(10)),
          shapes: scene?.shapes.length ?? 0,
          newShapesPerPull: most,
        },
        holds: most <= 20 && sceneMs <= 5,
      }
    },
  },
]
