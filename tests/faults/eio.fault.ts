import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { openStore, recordName } from '../../electron/store/index.ts'
import { buildId } from '../electron/sample.ts'
import { startOn } from './adding.ts'
import { found, type Fault, type Found } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'
import { noStrace } from './trace.ts'

const child = join(import.meta.dirname, 'eio-child.ts')
const calls = 'pwrite64,write,fsync,fdatasync,ftruncate,pread64,openat,lseek,fcntl,newfstatat,unlink'
/** Of the calls that touch the record or its log, from the start of the host on. */
const callsTried = 200
const apart = 20

export const faults: readonly Fault[] = [
  {
    name: 'EIO',
    must: 'whichever call of the system fails, what was confirmed is there, and three entries are added or none',
    run(seed): Promise<Found> {
      const lacking = noStrace()
      if (lacking !== null) return Promise.resolve({ skipped: lacking })
      return withFolder(async (around) => {
        const source = join(around, 'source')
        mkdirSync(source)
        ;(await startOn(source)).close()
        const wrong: string[] = []
        const counts = { callsFailed: 0, confirmed: 0 }
        // Each twentieth call, another one with each seed: twenty seeds try them all.
        for (let call = 1 + (seed % apart); call <= callsTried; call += apart) {
          const folder = join(around, `call-${call}`)
          cpSync(source, folder, { recursive: true })
          const file = join(folder, recordName)
          const paths = [file, `${file}-wal`].flatMap((each) => ['-P', each])
          const trace = ['-f', '-qq', '-o', '/dev/null', ...paths, '-e', `trace=${calls}`]
          const fault = ['-e', `inject=${calls}:error=EIO:when=${call}`]
          const run = spawnSync('strace', [...trace, ...fault, process.execPath, child, folder], {
            encoding: 'utf8',
          })
          const acknowledged = Number(run.stdout.trim().split('\n').at(-1) ?? 0)
          counts.callsFailed += 1
          counts.confirmed += acknowledged
          const kept = await lacksOf(folder, new Map([[buildId, acknowledged]]))
          wrong.push(...kept.lacks.map((lack) => `call ${call}: ${lack}`))
          if (kept.entries % 3 !== 1) wrong.push(`call ${call}: ${kept.entries} entries are no whole threes`)
          const opened = await openStore(folder, () => new Date())
          if (opened.ok) opened.value.close()
          else wrong.push(`call ${call}: ${opened.problem.code}`)
        }
        return found(counts, wrong)
      })
    },
  },
]
