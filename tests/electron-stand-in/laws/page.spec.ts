import { expect } from '@playwright/test'
import { Script } from 'node:vm'
import { testLaw } from './trial.ts'
import { ChromiumSurface } from '../page/chromium.ts'
import { asFunction, type Preload } from '../page/worlds.ts'

testLaw('preload-is-commonjs', {
  async seen(trial) {
    const { program } = await trial.shown()
    const { preload } = await program.log.next('window')
    const exposed: string[] = []
    const electron = {
      contextBridge: { exposeInMainWorld: (key: string) => exposed.push(key) },
      ipcRenderer: {},
    }
    const modules: string[] = []
    const require = (id: string): unknown => {
      modules.push(id)
      return electron
    }
    try {
      const body = new Script(`(${asFunction(String(preload))})`).runInThisContext() as Preload
      body(require, {}, {}, { exports: {} })
    } catch (error) {
      return String(error)
    }
    return { exposed, asked: modules }
  },
  kept: { exposed: ['bedplate'], asked: ['electron'] },
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
    // On a slow machine the window is shown before its page is there.
    const { page } = trial.surface
    await expect.poll(() => page.evaluate(() => 'bedplate' in window)).toBe(true)
    return page.evaluate(async () => {
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
