import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { createInterface } from 'node:readline'
import { engineFolder } from '../../engine-files.ts'
import { askAt } from '../ask.ts'
import type { Ask } from './host.ts'

/** The real local host, as `npm start -- --no-window` runs it. */
export interface LocalProcess {
  readonly address: string
  readonly ask: Ask
  /** Ends it as a power cut would. */
  kill(): Promise<void>
  /** Lets go of the record at the end of a test, and of the process where no other test goes on with it. */
  leave(): Promise<void>
}

const startsWithinMs = 20_000

export async function startLocalProcess(
  dataFolder: string,
  specs = engineFolder(),
  files: readonly string[] = [],
): Promise<LocalProcess> {
  const words = ['--data', dataFolder, '--specs', specs, '--no-window', ...files]
  // Files come by way of the launcher, which hands them on.
  const program = files.length === 0 ? 'dist/local/main.js' : 'electron/launch/main.ts'
  const child = spawn(process.execPath, [program, ...words], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const kill = () => endProcess(child)
  const address = await addressOf(child)
  return { address, ask: (name, input) => askAt(address, name, input), kill, leave: kill }
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let output = ''
    const late = setTimeout(
      () => reject(new Error(`no address after ${startsWithinMs} ms: ${output}`)),
      startsWithinMs,
    )
    child.stderr?.on('data', (chunk: Buffer) => (output += chunk.toString()))
    createInterface({ input: child.stdout! }).on('line', (line) => {
      output += `${line}\n`
      const address = /^Bedplate is at (\S+)$/.exec(line)?.[1]
      if (!address) return
      clearTimeout(late)
      resolve(address)
    })
    child.once('exit', (code) => {
      clearTimeout(late)
      reject(new Error(`the host ended with ${code}: ${output}`))
    })
  })
}

/** Ends it as a power cut would, and waits until it is gone. */
export function endProcess(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve()
    child.once('exit', () => resolve())
    child.kill('SIGKILL')
  })
}
