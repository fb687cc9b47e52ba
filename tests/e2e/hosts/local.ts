import type { Page } from '@playwright/test'
import { readFile } from 'node:fs/promises'
import type { Host, StartHost, Work } from './host.ts'
import { startLocalProcess, type LocalProcess } from './local-process.ts'
import { serveFromSharedHost } from './shared.ts'

/** The local host in a process of its own, as a person starts it, opened in a page of the test's browser. */
export const startLocal: StartHost = async (page, dataFolder, specs, files, work) =>
  shownIn(page, await startLocalProcess(dataFolder, specs, files), work)

/** The worker's host, which goes from test to test and from record to record. */
export const startShared: StartHost = async (page, dataFolder, specs, _, work) =>
  shownIn(page, await serveFromSharedHost(dataFolder, specs), work)

async function shownIn(page: Page, host: LocalProcess, work?: Work): Promise<Host> {
  await work?.(host.ask)
  await page.goto(host.address)
  return {
    page,
    ask: host.ask,
    kill: () => host.kill(),
    async leave() {
      await page.goto('about:blank') // what it would still ask gets no answer
      await host.leave()
    },
    pdf: () => page.pdf({ preferCSSPageSize: true }),
    async save(start) {
      const waiting = page.waitForEvent('download')
      await start()
      const download = await waiting
      return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) }
    },
  }
}
