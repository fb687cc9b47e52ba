import { _electron, type ElectronApplication } from '@playwright/test'
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { isRoot } from '../../../electron/launch/display.ts'
import { workedOn } from '../ask.ts'
import { whenThere, type StartHost } from './host.ts'

/** Path of Electron's real program, where there is one to test on. */
export const electronVariable = 'BEDPLATE_ELECTRON'

const root = join(import.meta.dirname, '../../..')

/** The desktop host on Electron's real program, which brings its own page. */
export const startOnElectron: StartHost = async (_, dataFolder, specs, files, work) => {
  const executablePath = process.env[electronVariable]
  if (executablePath === undefined) throw new Error(`${electronVariable} names no program`)
  const application = await _electron.launch({
    executablePath,
    // Chromium refuses to run as root with its sandbox; only tests ever do.
    args: [...(isRoot() ? ['--no-sandbox'] : []), root, '--data', dataFolder, '--specs', specs, ...files],
  })
  const page = await application.firstWindow()
  await application.evaluate(({ BrowserWindow }) =>
    BrowserWindow.getAllWindows()[0]?.setContentSize(1280, 800),
  )
  // The window loads by itself, before a clock can be put in its place: so it is loaded again.
  await application.context().clock.install()
  await page.reload()
  await workedOn(page, work)
  return {
    page,
    async kill() {
      const closed = application.waitForEvent('close')
      application.process().kill('SIGKILL')
      await closed
    },
    async crash() {
      await application.evaluate(({ BrowserWindow }) =>
        BrowserWindow.getAllWindows()[0]?.webContents.forcefullyCrashRenderer(),
      )
    },
    pdf: () => printed(application),
    save: (start) => saved(application, start),
  }
}

async function printed(application: ElectronApplication): Promise<Buffer> {
  const text = await application.evaluate(async ({ BrowserWindow }) => {
    const [window] = BrowserWindow.getAllWindows()
    const bytes = await window?.webContents.printToPDF({ preferCSSPageSize: true })
    return bytes?.toString('base64') ?? ''
  })
  return Buffer.from(text, 'base64')
}

/** Nobody can answer a dialog of the system, so what asks is given its answer. */
async function saved(application: ElectronApplication, start: () => Promise<void>) {
  const folder = await mkdtemp(join(tmpdir(), 'bedplate-saved-'))
  const question = application.evaluate(
    ({ dialog }, folder) =>
      new Promise<string>((resolve) => {
        dialog.showSaveDialog = (...dialogArguments: unknown[]) => {
          const { defaultPath = '' } = dialogArguments.at(-1) as { defaultPath?: string }
          const name = defaultPath.split(/[\\/]/).at(-1) ?? ''
          resolve(name)
          return Promise.resolve({ canceled: false, filePath: `${folder}/${name}` })
        }
      }),
    folder,
  )
  await start()
  const name = await question
  return { name, bytes: await whenThere(join(folder, name)) }
}
