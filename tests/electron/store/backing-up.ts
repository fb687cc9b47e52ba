import { join } from 'node:path'
import type { Store } from '../../../electron/store/index.ts'
import { append, fitted, folder, otherBuildId, startBuild, store } from '../bench.ts'

export const at = new Date('2026-04-19T08:15:02.500Z')

export const going = new AbortController().signal

export function backUp(record: Store, into: string, signal: AbortSignal) {
  return record.backUp({ folder: into, at, after: 0, rotate: true, signal })
}

/** A record of two builds, of three entries and of one. */
export async function twoBuilds() {
  const inFolder = folder()
  const record = await store(inFolder)
  startBuild(record)
  append(record, 1, [fitted('crank'), fitted('oil-seal')])
  startBuild(record, otherBuildId)
  return { inFolder, record, backups: join(inFolder, 'backups') }
}
