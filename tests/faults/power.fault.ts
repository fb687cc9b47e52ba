import { readFileSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { openStore, recordName } from '../../electron/store/index.ts'
import { chance } from './chance.ts'
import { acknowledged, childOf, confirming } from './child.ts'
import { found } from './fault.ts'
import type { Fault, Found } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'
import { diskAfterCut } from './power-cut.ts'
import type { Disk } from './power-cut.ts'
import { noStrace, readTrace, tracing } from './trace.ts'
import type { Act } from './trace.ts'

/** Confirms under strace; gives the files as they were before, and everything done to them. */
async function traced(
  mode: 'full' | 'normal',
  confirmations: number,
): Promise<{ start: Disk; acts: readonly Act[] }> {
  return withFolder(async (folder) => {
    const opened = await openStore(folder, () => new Date())
    if (!opened.ok) throw new Error('no record to begin with')
    opened.value.close()
    const file = join(folder, recordName)
    const start: Disk = new Map([[file, readFileSync(file)]])
    const trace = join(folder, 'trace')
    const child = childOf([...tracing(trace), process.execPath, confirming, folder, mode])
    await child.until((lines) => lines.length > confirmations)
    await child.kill()
    const acts = readTrace(trace).filter(
      (act) => act.kind === 'said' || basename(act.file).startsWith(recordName),
    )
    return { start, acts }
  })
}

/** Cuts the power at random moments; counts the images in which something acknowledged is missing. */
async function cuts(mode: 'full' | 'normal', images: number, seed: number) {
  const random = chance(2 * seed + (mode === 'full' ? 1 : 2))
  const { start, acts } = await traced(mode, 60)
  const first = acts.findIndex((act) => act.kind === 'said' && act.text.includes(' '))
  const lacks: string[] = []
  let losing = 0
  for (let image = 0; image < images; image += 1) {
    const until = first + 1 + Math.floor(random() * (acts.length - first))
    const disk = diskAfterCut(start, acts, until, random)
    const lines = acts.slice(0, until).flatMap((act) => (act.kind === 'said' ? act.text.split('\n') : []))
    const kept = await withFolder(async (folder) => {
      for (const [file, bytes] of disk) writeFileSync(join(folder, basename(file)), bytes)
      return lacksOf(folder, acknowledged(lines))
    })
    if (kept.lacks.length > 0) losing += 1
    lacks.push(...kept.lacks)
  }
  const confirmed = acts.filter((act) => act.kind === 'said').length
  return { losing, lacks, confirmed }
}

export const faults: readonly Fault[] = [
  {
    name: 'power cut',
    must: 'no acknowledged entry is lost; where SQLite does not wait for the disk (the control) some are',
    async run(seed): Promise<Found> {
      const why = noStrace()
      if (why !== null) return { skipped: why }
      const images = 120
      const full = await cuts('full', images, seed)
      const control = await cuts('normal', images, seed)
      const wrong = control.losing === 0 ? ['the control lost nothing, so this run shows nothing'] : []
      const counts = { images, losing: full.losing, controlLosing: control.losing, confirmed: full.confirmed }
      return found(counts, [...full.lacks, ...wrong])
    },
  },
  {
    name: 'late disk',
    must: 'nothing is said to be confirmed before the disk has it, which here takes three seconds more',
    async run(): Promise<Found> {
      const why = noStrace()
      if (why !== null) return { skipped: why }
      return withFolder(async (folder) => {
        const late = 'inject=fsync,fdatasync:delay_enter=3000000:when=20+'
        const words = ['strace', '-f', '-e', 'trace=fsync,fdatasync', '-e', late, '-o', '/dev/null']
        const child = childOf([...words, process.execPath, confirming, folder])
        await child.until((lines) => lines.length > 1)
        const waits: number[] = []
        for (let last = performance.now(); Math.max(0, ...waits) < 2_500;) {
          const before = child.lines.length
          await child.until((lines) => lines.length > before)
          waits.push(performance.now() - last)
          last = performance.now()
        }
        const lineCount = child.lines.length
        await new Promise((resolve) => setTimeout(resolve, 1_000))
        const early = child.lines.length - lineCount
        await child.kill()
        const kept = await lacksOf(folder, acknowledged(child.lines))
        const wrong = early > 0 ? [`${early} confirmed while the disk was still busy`] : []
        return found({ confirmed: lineCount, entries: kept.entries, early }, [...wrong, ...kept.lacks])
      })
    },
  },
]
