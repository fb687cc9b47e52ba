import { testLaw } from './trial.ts'
import { ChromiumSurface } from '../page/chromium.ts'

testLaw('preload-is-commonjs', {
  inPage: true,
  async seen(trial) {
    const { program } = await trial.start()
    if (!(trial.surface instanceof ChromiumSurface)) return null
    const { page } = trial.surface
    const asked = program.told.heard('message-box').then(() => 'the person was asked')
    const works = page.waitForFunction('typeof bedplate === "object"').then(() => 'it is there')
    works.catch(() => undefined) // where the page is loaded again meanwhile
    return Promise.race([asked, works])
  },
  kept: 'it is there',
  broken: [
    {
      in: 'preload.cjs',
      text: 'let electron = require("electron");',
      becomes: 'import electron from "electron";',
    },
  ],
})

testLaw('bridge-refuses-proxies', {
  inPage: true,
  async seen(trial) {
    await trial.shown()
    if (!(trial.surface instanceof ChromiumSurface)) return null
    return trial.surface.page.evaluate(async () => {
      const { bedplate } = window as unknown as {
        bedplate: { request(name: string, input: unknown): Promise<unknown> }
      }
      const state = new Proxy({ words: '' }, {})
      const asObject = (() => {
        try {
          void bedplate.request('builds.find', state)
          return 'crossed'
        } catch (error) {
          return String(error)
        }
      })()
      const answer = JSON.parse((await bedplate.request('builds.find', JSON.stringify(state))) as string) as {
        ok: boolean
      }
      return { asObject, asText: answer.ok }
    })
  },
  kept: { asObject: 'Error: An object could not be cloned.', asText: true },
  broken: [{ text: 'input = JSON.parse(text);', becomes: 'input = text;' }],
})
