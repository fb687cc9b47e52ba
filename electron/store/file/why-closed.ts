import { accessSync, constants, lstatSync, statSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import type { Facts } from '../../../core/problem/index.ts'
import { codeOf } from './code-of.ts'

/** Why nothing can be written in a folder, as far as looking at it and at those above it shows. Nothing is made. */
export function whyClosed(folder: string): Facts<'data-folder-closed'>['why'] {
  for (let at = resolve(folder); ; at = dirname(at)) {
    const found = lookedAt(at)
    if (found !== null) return found
    if (dirname(at) === at) return 'no-right'
  }
}

/** Null where this is not there, so that the one above it decides. */
function lookedAt(path: string): Facts<'data-folder-closed'>['why'] | null {
  try {
    if (lstatSync(path, { throwIfNoEntry: false }) === undefined) return null
  } catch (error) {
    return codeOf(error) === 'ENAMETOOLONG' ? 'too-long' : null // what stands above it says why it cannot be reached
  }
  try {
    statSync(path)
    accessSync(path, constants.W_OK | constants.X_OK)
    return 'no-right'
  } catch (error) {
    const code = codeOf(error)
    if (code === 'ENOENT' || code === 'ELOOP') return 'dangling'
    return code === 'EROFS' ? 'read-only' : 'no-right'
  }
}
