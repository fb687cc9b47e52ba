import { acknowledged, childOf, confirming } from './child.ts'
import { chance } from './chance.ts'
import { found } from './fault.ts'
import type { Fault } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'

export const faults: readonly Fault[] = [
  {
    name: 'kill -9',
    must: 'every acknowledged entry is there, without a gap, and the chain is whole',
    run: (seed) =>
      withFolder(async (folder) => {
        const random = chance(seed + 6)
        const confirmed = new Map<string, number>()
        const wrong: string[] = []
        const kills = 10
        let entries = 0
        for (let kill = 0; kill < kills; kill += 1) {
          const child = childOf([process.execPath, confirming, folder])
          const after = 2 + Math.floor(random() * 60)
          await child.until((lines) => lines.length > after)
          await child.kill()
          for (const [build, seq] of acknowledged(child.lines)) confirmed.set(build, seq)
          const kept = await lacksOf(folder, confirmed)
          wrong.push(...kept.lacks)
          entries = kept.entries
        }
        return found(
          { kills, entries, acknowledged: [...confirmed.values()].reduce((a, b) => a + b, 0) },
          wrong,
        )
      }),
  },
  {
    name: 'two starts',
    must: 'one writer; the second is told so; after a kill the next one opens at once',
    run: () =>
      withFolder(async (folder) => {
        const first = childOf([process.execPath, confirming, folder])
        await first.until((lines) => lines.length > 3)
        const second = childOf([process.execPath, confirming, folder])
        await new Promise((resolve) => second.process.once('close', resolve))
        const wrong = second.lines.join().includes('already running')
          ? []
          : [`the second said “${second.lines.join()}”`]
        const before = first.lines.length
        await first.until((lines) => lines.length > before + 3)
        await first.kill()
        const third = childOf([process.execPath, confirming, folder])
        await third.until((lines) => lines.length > 2)
        await third.kill()
        const kept = await lacksOf(
          folder,
          new Map([...acknowledged(first.lines), ...acknowledged(third.lines)]),
        )
        return found({ starts: 3, entries: kept.entries }, [...wrong, ...kept.lacks])
      }),
  },
]
