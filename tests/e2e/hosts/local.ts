import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { createInterface } from 'node:readline'
import type { StartHost } from './host.ts'

/** The real local host, as `npm start -- --no-window` runs it. */
export interface LocalProcess {
  readonly address: string
  kill(): Promise<void>
}

const startsWithinMs = 20_000

export async function startLocalProcess(
  dataFolder: string,
  specs = 'specs',
  files: readonly string[] = [],
): Promise<LocalProcess> {
  const words = ['--data', dataFolder, '--specs', specs, '--no-window', ...files]
  // Files come by way of the launcher, which hands them on.
  const program = files.length === 0 ? 'dist/local/main.js' : 'electron/launch/main.ts'
  const child = spawn(process.execPath, [program, ...words], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  return { address: await addressOf(child), kill: () => end(child) }
}

/** The local host, opened in a page of the test's browser. */
export const startLocal: StartHost = async (page, dataFolder, specs, files) => {
  const host = await startLocalProcess(dataFolder, specs, files)
  await page.goto(host.address)
  return {
    page,
    kill: () => host.kill(),
    pdf: () => page.pdf({ preferCSSPageSize: true }),
    async save(start) {
      const waiting = page.waitForEvent('download')
      await start()
      const download = await waiting
      return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) }
    },
  }
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    const late = setTimeout(
      () => reject(new Error(`no address after ${startsWithinMs} ms: ${said}`)),
      startsWithinMs,
    )
    child.stderr?.on('data', (chunk: Buffer) => (said += chunk.toString()))
    createInterface({ input: child.stdout! }).on('line', (line) => {
      said += `${line}\n`
      const address = /^Bedplate is at (\S+)$/.exec(line)?.[1]
      if (!address) return
      clearTimeout(late)
      resolve(address)
    })
    child.once('exit', (code) => {
      clearTimeout(late)
      reject(new Error(`the host ended with ${code}: ${said}`))
    })
  })
}

function end(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve()
    child.once('exit', () => resolve())
    child.kill('SIGKILL')
  })
}
