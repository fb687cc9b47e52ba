import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'

/** A host in a process of its own, and what it has said so far. */
export interface Child {
  readonly process: ChildProcess
  readonly lines: readonly string[]
  /** Waits until it holds; throws when the child ended before. */
  readonly until: (holds: (lines: readonly string[]) => boolean) => Promise<void>
  /** Ends it as a pulled plug does, and waits for the end. */
  readonly kill: () => Promise<void>
}

export const confirming = join(import.meta.dirname, 'confirming.ts')

/** The command `words`, which ends in a confirming host. It is a group of its own, so that what traces it dies with it. */
export function childOf(words: readonly string[]): Child {
  const [program = '', ...rest] = words
  const child = spawn(program, rest, { stdio: ['pipe', 'pipe', 'inherit'], detached: true })
  const lines: string[] = []
  let part = ''
  child.stdout.on('data', (bytes: Buffer) => {
    const whole = (part + bytes.toString()).split('\n')
    part = whole.pop() ?? ''
    lines.push(...whole)
  })
  let ended = false
  const end = once(child, 'close').then(() => (ended = true))
  return {
    process: child,
    lines,
    async until(holds) {
      while (!holds(lines)) {
        if (ended) throw new Error(`the host ended after “${lines.at(-1) ?? ''}”`)
        await new Promise((resolve) => setTimeout(resolve, 2))
      }
    },
    async kill() {
      if (!ended && child.pid !== undefined) process.kill(-child.pid, 'SIGKILL')
      await end
    },
  }
}

/** How many entries each build was said to have. */
export function acknowledged(lines: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const line of lines) {
    const [build = '', seq = ''] = line.split(' ')
    if (/^[0-9a-f-]{36}$/.test(build)) counts.set(build, Number(seq))
  }
  return counts
}
