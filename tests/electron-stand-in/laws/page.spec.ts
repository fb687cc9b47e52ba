import { testLaw } from './trial.ts'
import { ChromiumSurface } from '../page/chromium.ts'

testLaw('preload-is-commonjs', {
  inPage: true,
  async seen(trial) {
    trial.standIn.person.press = (_message, buttons) => buttons.length - 1 // to end the program
    const { program } = await trial.start()
    if (!(trial.surface instanceof ChromiumSurface)) return null
    const { page } = trial.surface
    const asked = program.told.heard('message-box').then(() => 'the person was asked')
    const works = page
      .getByRole('button', { name: /Tarn 4/ })
      .waitFor()
      .then(() => 'the engines are there')
    works.catch(() => undefined) // where the page is loaded again meanwhile
    return Promise.race([asked, works])
  },
  kept: 'the engines are there',
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
