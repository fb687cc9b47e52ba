import { spawn } from 'node:child_process'

/** A desktop host that ends badly within this time never showed its window, in milliseconds. */
const failureMs = 5_000

/**
 * Runs the desktop host to its end and answers with its exit code, or with `undefined` when it never came up, as for want
 * of a system library or of the right to a sandbox: then the other host is still to be had.
 */
export async function runDesktop(binary: string, root: string, data: string): Promise<number | undefined> {
  const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env
  const start = Date.now()
  const desktop = spawn(binary, [root, '--data', data], { env, stdio: 'inherit' })
  const passOn = (signal: NodeJS.Signals): boolean => desktop.kill(signal)
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const
  for (const signal of signals) process.on(signal, passOn)
  const code = await new Promise<number | null>((resolve) => {
    desktop.on('error', () => resolve(null))
    desktop.on('close', resolve)
  })
  for (const signal of signals) process.off(signal, passOn)
  const cameUp = code === 0 || Date.now() - start > failureMs
  return cameUp ? (code ?? 1) : undefined
}
