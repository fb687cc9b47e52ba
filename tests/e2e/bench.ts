import { test as base } from '@playwright/test'
import type { CDPSession, Page } from '@playwright/test'
import { resolve } from 'node:path'
import { engineFolder } from '../engine-files.ts'
import { askBeside } from './ask.ts'
import { startOnElectron } from './hosts/electron.ts'
import { withDataFolder, type Host, type SavedFile, type StartHost, type Work } from './hosts/host.ts'
import { startLocal, startShared } from './hosts/local.ts'
import { startPlayed } from './hosts/played.ts'

/** The hosts in which the same tests run; a project of the configuration chooses one. */
const hosts = {
  /** The worker's local host, which goes from test to test. */
  local: startShared,
  /** The local host in a process of its own. */
  alone: startLocal,
  /** The desktop host on a stand-in for Electron's program. */
  played: startPlayed,
  /** The desktop host on the real program. */
  electron: startOnElectron,
} satisfies Record<string, StartHost>

export type HostName = keyof typeof hosts

/** How the program is started again on a data folder that a test has used: the shared host was killed, and there may be files. */
const hostsAgain = { ...hosts, local: startLocal }

interface Starts {
  readonly first: (work?: Work) => Promise<Host>
  /** After the host was killed, with files to open. */
  readonly again: (files: readonly string[]) => Promise<Host>
}

/** A bench for one test: its own data folder, the program running on it in some host, and the page that shows it. */
export class Bench {
  readonly dataFolder: string
  readonly #starts: Starts
  #opened: Host | null = null
  /** Always the page as it is now, so that a test may hold it over a new start. */
  readonly page: Page

  constructor(dataFolder: string, starts: Starts) {
    this.dataFolder = dataFolder
    this.#starts = starts
    this.page = new Proxy({} as Page, {
      get: (_, key) => {
        const page = this.#host.page
        const member: unknown = Reflect.get(page, key, page)
        return typeof member === 'function' ? (member.bind(page) as unknown) : member
      },
    })
    askBeside(this.page, () => this.#host.ask)
  }

  /** Starts the program and shows it, with `work` done before anything is seen of it. */
  async open(work?: Work) {
    this.#opened = await this.#starts.first(work)
  }

  get isOpen(): boolean {
    return this.#opened !== null
  }

  get #host(): Host {
    if (this.#opened === null) throw new Error('the bench has not been opened yet')
    return this.#opened
  }

  /** Kills the host as a power cut would, and starts it again on the same folder, with files to open. */
  async cutPowerAndStartAgain(files: readonly string[] = []) {
    await this.kill()
    this.#opened = await this.#starts.again(files)
  }

  kill(): Promise<void> {
    return this.#host.kill()
  }

  /** What a test leaves running is ended, or goes on to the next test. */
  async leave(): Promise<void> {
    if (this.#opened !== null) await (this.#opened.leave?.() ?? this.kill())
  }

  async crash(): Promise<void> {
    if (this.#host.crash === undefined) throw new Error('this host does not look after its page')
    await this.#host.crash()
  }

  save(start: () => Promise<void>): Promise<SavedFile> {
    return this.#host.save(start)
  }

  /** The page by Chromium's own protocol, for what Playwright has no words for, such as two fingers. */
  protocol(): Promise<CDPSession> {
    const { page } = this.#host
    return page.context().newCDPSession(page)
  }

  pdf(): Promise<Buffer> {
    return this.#host.pdf()
  }
}

/** A test that goes through main, the preload, a saved file or a restart: it runs in the desktop host at every run. */
export const onDesktopToo = { tag: '@desktop' }
/** A test that runs in the desktop host, and in the local one with `BEDPLATE_HOSTS=all` alone. */
export const onDesktopAlone = { tag: ['@desktop', '@desktop-alone'] }

interface OfATest {
  bench: Bench
  unopened: Bench
  specs: string
  engines: readonly string[]
  host: HostName
}

export const test = base.extend<OfATest>({
  host: ['local', { option: true }],
  /** The engines that can be built: those that most tests are about. Each more is read by every start, and drawn by every list. */
  engines: [['fen-1', 'skerry-3', 'tarn-4'], { option: true }],
  /** Where their specs lie. */
  specs: async ({ engines }, use) => use(engineFolder(engines)),
  /** The bench before its program is started, for a test that begins with work done: it loads the page once, not twice. */
  unopened: async ({ page, specs, host }, use) => {
    await withDataFolder(async (folder) => {
      await page.clock.install()
      const from = resolve(specs)
      const bench = new Bench(folder, {
        first: (work) => hosts[host](page, folder, from, [], work),
        again: (files) => hostsAgain[host](page, folder, from, files),
      })
      await use(bench)
      await bench.leave()
    })
  },
  bench: async ({ unopened }, use) => {
    await unopened.open()
    await use(unopened)
  },
})

export { expect } from '@playwright/test'
