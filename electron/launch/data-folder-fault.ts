import { statSync } from 'node:fs'
import { problem } from '../../core/problem/index.ts'
import type { Problem } from '../../core/problem/index.ts'

/** Why nothing can be kept at this path, where that can be seen without making anything: it is, or lies in, a file. */
export function dataFolderFault(folder: string): Problem | null {
  try {
    const found = statSync(folder, { throwIfNoEntry: false })
    return found === undefined || found.isDirectory() ? null : problem('data-folder-is-file', { folder })
  } catch (error) {
    const isInFile = error instanceof Error && 'code' in error && error.code === 'ENOTDIR'
    return isInFile ? problem('data-folder-is-file', { folder }) : null // any other is found when it is opened
  }
}
