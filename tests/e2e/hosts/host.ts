import type { Page } from '@playwright/test'
import { existsSync } from 'node:fs'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import type { Input, Output, RequestName } from '../../../core/contract/index.ts'

export interface SavedFile {
  /** The name under which it was offered. */
  readonly name: string
  readonly bytes: Buffer
}

/** The running program, in one of its hosts, with the page that shows it. */
export interface Host {
  /** The page as it is at the moment: some hosts go on in another one. */
  readonly page: Page
  /** Asks the host without the page's doing, which takes the page's processor time; where there is a way. */
  readonly ask?: Ask
  /** Does what saves a file, lets the person say yes, and answers with what was saved. */
  save(start: () => Promise<void>): Promise<SavedFile>
  /** What goes to paper, as the page itself asks for it. */
  pdf(): Promise<Buffer>
  /** Ends the process that shows the page, and waits until the page is there again; only where the host looks after it. */
  crash?(): Promise<void>
  /** Ends the program as a power cut would: nothing is tidied up. */
  kill(): Promise<void>
  /** What is done at the end of a test, where that is less than to kill it. */
  leave?(): Promise<void>
}

/** Asks the program what its window would ask. */
export type Ask = <Name extends RequestName>(name: Name, input: Input<Name>) => Promise<Output<Name>>

/** What is done by requests before the program is shown. */
export type Work = (ask: Ask) => Promise<void>

/**
 * Starts the program on a data folder and shows it; `page` is there for hosts that need one from outside. `files` are what it is
 * asked to open.
 */
export type StartHost = (
  page: Page,
  dataFolder: string,
  specs: string,
  files: readonly string[],
  work?: Work,
) => Promise<Host>

export async function withDataFolder<Result>(use: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = await mkdtemp(join(tmpdir(), 'bedplate-e2e-'))
  try {
    return await use(folder)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** The content of a file that is being saved: it appears whole under its name. */
export async function whenThere(file: string): Promise<Buffer> {
  while (!existsSync(file)) await after(20)
  return readFile(file)
}
