import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'

/** The real local host, as `npm start -- --no-window` runs it, on a data folder of its own. */
export interface Host {
  readonly address: string
  /** Ends it as a power cut would: nothing is tidied up. */
  kill(): Promise<void>
}

const startsWithinMs = 20_000

export async function startHost(dataFolder: string, specs = 'specs'): Promise<Host> {
  const words = ['--data', dataFolder, '--specs', specs, '--no-window']
  const child = spawn(process.execPath, ['electron/local/main.ts', ...words], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  return { address: await addressOf(child), kill: () => end(child) }
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

export async function withDataFolder<Result>(use: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = await mkdtemp(join(tmpdir(), 'bedplate-e2e-'))
  try {
    return await use(folder)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
