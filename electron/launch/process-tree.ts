import { spawn, type ChildProcess } from 'node:child_process'

/** How long a process that was asked to end may take before it is ended, in milliseconds. */
const graceMs = 5_000

/**
 * How a process is spawned so that it can be ended with all that it started: as the head of a group of its own. A terminal's
 * Ctrl+C then reaches it through its launcher alone, once. Windows has no such groups, and a console of its own in their place.
 */
export const ownGroup = { detached: process.platform !== 'win32' } as const

/** Asks it to quit as a person would. On Windows a signal would end it at once (Node's documentation); closing its windows does not. */
export function askToQuit(child: ChildProcess, signal: NodeJS.Signals): void {
  if (process.platform === 'win32') taskkill(child, [])
  else child.kill(signal)
}

/** Ends it and all that it started; those who do not go within a while are ended without a word. Settles when it has ended. */
export async function endTree(child: ChildProcess): Promise<void> {
  if (hasEnded(child)) return
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()))
  if (process.platform === 'win32') {
    taskkill(child, ['/T', '/F'])
    return ended
  }
  killGroup(child, 'SIGTERM')
  const last = setTimeout(() => killGroup(child, 'SIGKILL'), graceMs)
  await ended
  clearTimeout(last)
  killGroup(child, 'SIGKILL') // what it started may have outlived it
}

function hasEnded({ exitCode, signalCode, pid }: ChildProcess): boolean {
  return pid === undefined || exitCode !== null || signalCode !== null
}

function killGroup({ pid }: ChildProcess, signal: NodeJS.Signals): void {
  try {
    if (pid !== undefined) process.kill(-pid, signal)
  } catch {
    // nobody of the group is left
  }
}

function taskkill({ pid }: ChildProcess, how: readonly string[]): void {
  if (pid !== undefined)
    spawn('taskkill', ['/PID', String(pid), ...how], { stdio: 'ignore', windowsHide: true })
}
