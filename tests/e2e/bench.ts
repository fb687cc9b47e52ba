import { test as base } from '@playwright/test'
import type { Page } from '@playwright/test'
import { startHost, withDataFolder } from './host.ts'
import type { Host } from './host.ts'

/** A bench for one test: its own data folder, the host running on it, and a page that is open at it. */
export class Bench {
  readonly page: Page
  readonly dataFolder: string
  readonly specs: string
  #host: Host

  constructor(page: Page, dataFolder: string, specs: string, host: Host) {
    this.specs = specs
    this.page = page
    this.dataFolder = dataFolder
    this.#host = host
  }

  async open() {
    await this.page.goto(this.#host.address)
  }

  /** Kills the host as a power cut would, starts it anew on the same folder, and opens the page at its new address. */
  async cutPowerAndStartAgain() {
    await this.kill()
    this.#host = await startHost(this.dataFolder, this.specs)
    await this.open()
  }

  kill() {
    return this.#host.kill()
  }
}

export const test = base.extend<{ bench: Bench; specs: string }>({
  /** Where the engine specs lie. */
  specs: 'specs',
  bench: async ({ page, specs }, use) => {
    await withDataFolder(async (folder) => {
      await page.clock.install()
      const bench = new Bench(page, folder, specs, await startHost(folder, specs))
      await bench.open()
      await use(bench)
      await bench.kill()
    })
  },
})

export { expect } from '@playwright/test'
