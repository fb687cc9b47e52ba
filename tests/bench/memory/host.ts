import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { getHeapStatistics } from 'node:v8'
import { sentenceOf } from '../../../core/problem/index.ts'
import { startLocalHost } from '../../../electron/local/server.ts'
import { newToken } from '../../../electron/local/token.ts'
import { openRequests } from '../../../electron/requests/index.ts'

// A local host without a window: `node --expose-gc host.ts FOLDER`. It tells its parent its address, and at each message
// how much memory it has once everything that can be let go of is gone.
const folder = process.argv[2] ?? ''
const opened = await openRequests(
  { host: 'local', why: { code: 'hostByItself', facts: {} }, version: '0.1.0', dataFolder: folder },
  join(import.meta.dirname, '../../../specs'),
  () => undefined,
)
if (!opened.ok) throw new Error(sentenceOf(opened.problem))
const { answer } = opened.value
const host = await startLocalHost({ pages: new Map(), answer, token: newToken() })
process.on('message', () => {
  // Twice: what the first round only marks as ended goes in the second.
  globalThis.gc?.()
  globalThis.gc?.()
  process.send?.(memory())
})
process.once('disconnect', () => process.exit())
process.send?.(host.address)

/**
 * `privateBytes` as the system sees them; `inUse` less the room that V8 keeps ready for new objects, which it makes larger in
 * leaps of tens of megabytes when much is allocated, whether anything is kept or not.
 */
function memory(): { privateBytes: number; inUse: number } {
  const own = privateBytes()
  const heap = getHeapStatistics()
  return { privateBytes: own, inUse: own - (heap.total_physical_size - heap.used_heap_size) }
}

/** Memory that no other process shares: pages of the program's own files do not count. */
function privateBytes(): number {
  const rollup = readFileSync('/proc/self/smaps_rollup', 'utf8')
  return [...rollup.matchAll(/^Private_(?:Clean|Dirty): +(\d+) kB$/gm)].reduce(
    (sum, [, kB]) => sum + Number(kB) * 1024,
    0,
  )
}
