import { spawn } from 'node:child_process'
import { constants, setPriority } from 'node:os'
import { join } from 'node:path'

export const root = join(import.meta.dirname, '../..')

export type Command = {
  /** Files are run by this Node; a bare name is looked up by the system. */
  readonly words: readonly [string, ...string[]]
  readonly env?: Readonly<Record<string, string>>
  /** Whether its output is shown while it runs, or kept. */
  readonly shown?: boolean
  /** Whether it gives way to what runs beside it. */
  readonly givesWay?: boolean
}

export type Finished = { readonly code: number | null; readonly output: string }

export function run({
  words: [first, ...rest],
  env = {},
  shown = false,
  givesWay = false,
}: Command): Promise<Finished> {
  const [program, words] = /\.[cm]?[jt]s$/.test(first)
    ? [process.execPath, [join(root, first), ...rest]]
    : [first, rest]
  const { FORCE_COLOR: _, ...surroundings } = process.env
  const child = spawn(program, words, {
    cwd: root,
    env: { ...surroundings, NO_COLOR: '1', ...env },
    stdio: ['ignore', shown ? 'inherit' : 'pipe', shown ? 'inherit' : 'pipe'],
  })
  if (givesWay && child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL)
  let output = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (text) => (output += String(text)))
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ code: null, output: error.message }))
    child.on('close', (code) => resolve({ code, output }))
  })
}
