import { keepUnchanged, sceneOf } from '../../core/layout/index.ts'
import type { Measure } from './measure.ts'
import { withPage } from './paint/open.ts'
import { factsAt, manyFasteners } from './paint/scenes.ts'
import { en } from '../../core/words/index.ts'

const sheet = { widthPx: 1400, heightPx: 950, capitalPx: 12 }
const view = { from: 'below', turn: 0 } as const

/** The scene of a run of `count` fasteners with the given pull done, its shapes those of the scene before where equal. */
function scenesOfRun(count: number, pulls: number) {
  const spec = manyFasteners(count)
  let scene = sceneOf(en, spec, factsAt(spec, 0), view, sheet)
  return Array.from({ length: pulls }, (_, index) => {
    const before = scene
    scene = keepUnchanged(before, sceneOf(en, spec, factsAt(spec, index + 1), view, sheet))
    return scene
  })
}

function median(values: number[]): number {
  return values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
}

export const measures: readonly Measure[] = [
  {
    name: 'paint 300 fasteners, against plain Konva',
    bar: 'at most 1.5 times plain Konva drawing the same marks; three layers at most',
    take: () =>
      withPage({ width: sheet.widthPx, height: sheet.heightPx }, async (tab) => {
        const [scene] = scenesOfRun(300, 1)
        if (scene === undefined) throw new Error('there is no scene')
        await tab.evaluate((each) => void page.show(each, 'light'), scene)
        const pairs = await tab.evaluate((each) => page.compare(each, 'light', 25), scene)
        const ratio = median(pairs.map(([ours, bare]) => ours / bare))
        const layers = await tab.evaluate(() => page.layers())
        return {
          values: {
            paintMs: median(pairs.map(([ours]) => ours)),
            bareMs: median(pairs.map(([, bare]) => bare)),
            ratio,
            layers,
          },
          holds: ratio <= 1.5 && layers <= 3,
        }
      }),
  },
  {
    name: 'one pull painted, 300 fasteners',
    bar: 'only the two layers that change are drawn, once each; their nodes are put right in 1 ms (median)',
    take: () =>
      withPage({ width: sheet.widthPx, height: sheet.heightPx }, async (tab) => {
        const scenes = scenesOfRun(300, 40)
        // Passed over as a whole: shapes that are one object here must be one object there.
        const found = await tab.evaluate(async (all) => {
          const known = new Map<string, (typeof all)[number]['shapes'][number]>()
          const times: number[] = []
          const draws: number[] = []
          for (const scene of all) {
            const shapes = scene.shapes.map((shape) => {
              const before = known.get(shape.id)
              if (before !== undefined && JSON.stringify(before) === JSON.stringify(shape)) return before
              known.set(shape.id, shape)
              return shape
            })
            page.drawsSince()
            times.push(page.show({ ...scene, shapes }, 'light'))
            await page.painted()
            draws.push(page.drawsSince())
          }
          // The first two are those of a window that is still being set up.
          return { times: times.slice(2), draws: draws.slice(2) }
        }, scenes)
        const reconcileMs = median(found.times)
        return {
          values: { reconcileMs, layersDrawnPerChange: Math.max(...found.draws) },
          holds: Math.max(...found.draws) <= 2,
        }
      }),
  },
]
