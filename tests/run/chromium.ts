import { existsSync } from 'node:fs'
import { homedir } from 'node:os'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'
import { browserAmong, browserPlaces } from '../../electron/launch/browser.ts'
import { isRoot } from '../../electron/launch/display.ts'
import { run } from './command.ts'

/** Chromium without a window of its own, as Debian has it: half the processor time of the whole browser. */
const headlessShell = 'chromium-headless-shell'

/**
 * Path of a Chromium to test in: one that was named, one on this machine (best the headless one), Playwright's own; else
 * one that is installed now, as Debian's package where that may be done, as Playwright's own otherwise. `undefined` when none is to be had.
 */
export async function chromiumToTest(): Promise<string | undefined> {
  const named = process.env.BEDPLATE_CHROMIUM
  if (named !== undefined) return named
  const found = chromiumHere()
  if (found !== undefined) return found
  console.log('Installing Chromium for the end-to-end tests …')
  if (isRoot() && process.platform === 'linux')
    await run({ words: ['bash', join(import.meta.dirname, 'install-chromium.sh')] })
  if (chromiumHere() === undefined)
    await run({ words: ['node_modules/@playwright/test/cli.js', 'install', 'chromium'] })
  return chromiumHere()
}

/** Why Chromium cannot run in its sandbox here, in its own words; `undefined` when it can. */
export async function whyNoSandbox(executablePath: string): Promise<string | undefined> {
  if (isRoot()) return 'Chromium has none as root'
  try {
    await (await chromium.launch({ executablePath, chromiumSandbox: true })).close()
    return undefined
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error)
    return message.split('\n').find((line) => /sandbox/i.test(line)) ?? message.split('\n', 1).join()
  }
}

function chromiumHere(): string | undefined {
  const own = chromium.executablePath()
  const inPath = (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, headlessShell))
  return (
    inPath.find((path) => existsSync(path)) ??
    browserAmong(browserPlaces(process.platform, process.env, homedir())) ??
    (existsSync(own) ? own : undefined)
  )
}
