import { spawnSync } from 'node:child_process'
import { statSync } from 'node:fs'
import { join } from 'node:path'
import { openStore, recordName } from '../../electron/store/index.ts'
import { acknowledged, childOf, confirming } from './child.ts'
import { found } from './fault.ts'
import type { Fault, Found } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'

const roomBytes = 200 * 1024

export const faults: readonly Fault[] = [
  {
    name: 'disk full',
    must: '“not saved” is said, the entry does not count, and it is saved when there is room again',
    async run(): Promise<Found> {
      if (spawnSync('prlimit', ['--version']).status !== 0) return { skipped: 'prlimit is not there' }
      return withFolder(async (folder) => {
        const begun = await openStore(folder, () => new Date())
        if (begun.ok) begun.value.close()
        const most = statSync(join(folder, recordName)).size + roomBytes
        const child = childOf(['prlimit', `--fsize=${most}:unlimited`, process.execPath, confirming, folder])
        await child.until((lines) => lines.at(-1)?.startsWith('refused') === true)
        const refusal = child.lines.at(-1) ?? ''
        const before = acknowledged(child.lines)
        child.process.stdin?.write('try again\n')
        await child.until((lines) => lines.filter((line) => line.startsWith('refused')).length > 1)
        const room = spawnSync('prlimit', ['--pid', String(child.process.pid), '--fsize=unlimited'])
        child.process.stdin?.write('try again\n')
        const goes =
          room.status === 0 && (await child.until((lines) => lines.length > before.size + 60), true)
        await child.kill()
        const kept = await lacksOf(folder, acknowledged(child.lines))
        const wrong = [
          ...(refusal === 'refused record-not-saved' ? [] : [`it said “${refusal}”`]),
          ...(goes ? [] : ['no room could be made']),
        ]
        const confirmedWhileFull = [...before.values()].reduce((a, b) => a + b, 0)
        return found({ confirmedBeforeFull: confirmedWhileFull, entries: kept.entries }, [
          ...wrong,
          ...kept.lacks,
        ])
      })
    },
  },
]
