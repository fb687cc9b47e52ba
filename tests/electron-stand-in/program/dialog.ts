import type { Dialog, MessageBoxOptions, SaveDialogOptions, SaveDialogReturnValue } from 'electron'
import { existsSync } from 'node:fs'
import { life } from './life.ts'
import { outside, warn } from './outside.ts'
import { strict } from './strict.ts'

/** lib/browser/api/dialog.ts, checkAppInitialized */
function mustBeReady(): void {
  if (!life.isReady) throw new Error('dialog module can only be used after app is ready')
}

/** The options of a dialog, before which there may be a window. */
function optionsOf<Options>(values: readonly unknown[]): Options {
  return values.at(-1) as Options
}

/** shell/browser/ui/file_dialog_linux.cc, ApplySettings: it asks about a file that is there only where it is told to. */
export async function askWhereToSave(options: SaveDialogOptions): Promise<SaveDialogReturnValue> {
  const answer = await outside.ask('save-dialog', { options })
  const isAsked = options.properties?.includes('showOverwriteConfirmation') === true
  if (process.platform === 'linux' && !answer.canceled && existsSync(answer.filePath) && !isAsked)
    warn(`${answer.filePath} is overwritten without a question`)
  return answer
}

type Played = 'showErrorBox' | 'showSaveDialog' | 'showMessageBox'

export const dialog: Pick<Dialog, Played> = strict('dialog', {
  /** Before ready it goes to stderr on Linux; afterwards it blocks until somebody closes it, which is done at once here. */
  showErrorBox(title: string, content: string): void {
    if (typeof title !== 'string' || typeof content !== 'string')
      throw new TypeError('Title must be a string')
    console.error(`${title}\n${content}`)
    outside.tell('error-box', { title, content, ready: life.isReady })
  },
  async showSaveDialog(...values: readonly unknown[]) {
    mustBeReady()
    return askWhereToSave(optionsOf(values))
  },
  async showMessageBox(...values: readonly unknown[]) {
    mustBeReady()
    const { icon: _, signal: __, ...options } = optionsOf<MessageBoxOptions>(values)
    return { response: await outside.ask('message-box', { options }), checkboxChecked: false }
  },
})
