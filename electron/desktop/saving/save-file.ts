import { done, refused } from '../../../core/problem/index.ts'
import type { SaveFile } from '../../requests/index.ts'
import type { FileSaver } from './file-saver.ts'

/** Answers the window when a file of its own is on disk, or not to be. */
export function saveFileBy(saver: FileSaver): SaveFile {
  return async ({ fileName, text }) => {
    const saved = await saver.save(fileName, text)
    if (saved.kind === 'failed') return refused('file-not-saved', { file: fileName })
    return done({ path: saved.kind === 'saved' ? saved.path : null })
  }
}
