import { mkdtemp } from 'node:fs/promises'
import { basename, join } from 'node:path'
import type { SaveDialogOptions } from 'electron'
import { ChromiumSurface } from '../../electron-stand-in/page/chromium.ts'
import { StandIn } from '../../electron-stand-in/page/stand-in.ts'
import { workedOn } from '../ask.ts'
import { whenThere, type StartHost } from './host.ts'

/** The desktop host's real main and preload, on a stand-in for Electron's program, in a page of the test's browser. */
export const startPlayed: StartHost = async (page, dataFolder, specs, files, work) => {
  const surface = new ChromiumSurface(page)
  const standIn = await StandIn.on(surface)
  const words = ['--data', dataFolder, '--specs', specs, ...files]
  const { program, ended, output } = await standIn.start(words, { XDG_STATE_HOME: join(dataFolder, 'state') })
  const shown = await Promise.race([program.log.next('shown'), ended])
  if (!('kind' in shown)) throw new Error(`it ended without a window: ${output()}`)
  await workedOn(surface.page, work)
  return {
    get page() {
      return surface.page
    },
    async crash() {
      const loads = program.log.all('load').length
      await surface.crash()
      await program.log.next('load', loads)
    },
    async kill() {
      await program.kill()
      await standIn.close()
    },
    pdf: () => surface.page.pdf({ preferCSSPageSize: true }),
    async save(start) {
      const folder = await mkdtemp(join(standIn.folder, 'saved-'))
      const named = (question: object): string =>
        basename(String((question as SaveDialogOptions).defaultPath))
      standIn.person = { ...standIn.person, saveAt: (question) => join(folder, named(question)) }
      const before = program.log.all('save-dialog').length
      await start()
      const name = named(await program.log.next('save-dialog', before))
      return { name, bytes: await whenThere(join(folder, name)) }
    },
  }
}
