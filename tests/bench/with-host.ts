import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { createInterface } from 'node:readline'

const root = join(import.meta.dirname, '../..')

/** Runs a host until the work with its address is done. */
export async function withHost<Result>(
  words: readonly string[],
  work: (address: string) => Promise<Result>,
): Promise<Result> {
  const [program = '', ...rest] = words
  // A group of its own: npm hands a signal on to its script too late for the next round.
  const child = spawn(program, rest, { cwd: root, stdio: ['ignore', 'pipe', 'ignore'], detached: true })
  const ended = once(child, 'exit')
  try {
    for await (const line of createInterface({ input: child.stdout })) {
      const address = /^Bedplate is at (\S+)$/.exec(line)?.[1]
      if (address !== undefined) return await work(address)
    }
    throw new Error('the host did not come up')
  } finally {
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGTERM')
    await ended
  }
}
