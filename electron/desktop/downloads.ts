import { dirname } from 'node:path'
import { dialog } from 'electron'
import type { Session } from 'electron'
import { saveQuestion } from './save-place.ts'
import type { WindowMemory } from './window-memory.ts'

/**
 * Asks where a download is to be put as the program asks for any file. Left to itself Electron asks under the address of a
 * blob, and says nothing of a download that failed (shell/browser/electron_download_manager_delegate.cc).
 */
export function watchDownloads(session: Session, memory: WindowMemory): void {
  session.on('will-download', (_event, item) => {
    item.setSaveDialogOptions(saveQuestion(item.getFilename(), memory.now.saveFolder))
    item.once('done', (_done, state) => {
      if (state === 'completed') memory.keep({ saveFolder: dirname(item.getSavePath()) })
      if (state === 'interrupted')
        dialog.showErrorBox(
          'Bedplate',
          `${item.getFilename()} was not saved: it could not be written there. Save it again in another folder.`,
        )
    })
  })
}
