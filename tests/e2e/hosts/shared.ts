import { fork, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import type { Answer } from '../../../core/contract/index.ts'
import { valueOf } from '../ask.ts'
import type { HostOrder, HostReply } from './bench-host.ts'
import { endProcess, type LocalProcess } from './local-process.ts'

const program = join(import.meta.dirname, 'bench-host.ts')

/** The host of this worker, when one was started and no test has killed it. */
let running: ChildProcess | null = null

/**
 * Serves a new record from the worker's one host, which is started where there is none. To kill it is to kill the process, as
 * a power cut would; the next test then starts another.
 */
export async function serveFromSharedHost(dataFolder: string, specs: string): Promise<LocalProcess> {
  const child = (running ??= started())
  const reply = await replyTo(child, { open: { dataFolder, specs } })
  if (typeof reply === 'object' && 'refused' in reply) throw new Error(reply.refused)
  if (typeof reply !== 'object' || !('address' in reply)) throw unlike(reply)
  return {
    address: reply.address,
    async ask(name, input) {
      const reply = await replyTo(child, { ask: { name, input } })
      if (typeof reply !== 'object' || !('answer' in reply)) throw unlike(reply)
      return valueOf(name, reply.answer as Answer<typeof name>)
    },
    kill() {
      if (running === child) running = null
      return endProcess(child)
    },
    async leave() {
      if (running === child) await replyTo(child, 'close')
    },
  }
}

function unlike(reply: HostReply): Error {
  return new Error(`the tests’ host answered ${JSON.stringify(reply)}`)
}

function started(): ChildProcess {
  const child = fork(program, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'], execArgv: [] })
  child.once('exit', () => {
    if (running === child) running = null
  })
  return child
}

/** One order at a time: a reply does not say which it is for. */
function replyTo(child: ChildProcess, order: HostOrder): Promise<HostReply> {
  const reply = (last.get(child) ?? Promise.resolve()).then(() => replyNow(child, order))
  last.set(
    child,
    reply.catch(() => undefined),
  )
  return reply
}

const last = new WeakMap<ChildProcess, Promise<unknown>>()

function replyNow(child: ChildProcess, order: HostOrder): Promise<HostReply> {
  const listening = new AbortController()
  const { signal } = listening
  const reply = once(child, 'message', { signal }).then(([message]) => message as HostReply)
  const ended = once(child, 'exit', { signal }).then(([code]): HostReply => {
    throw new Error(`the tests’ host ended with ${String(code)}`)
  })
  child.send(order)
  return Promise.race([reply, ended]).finally(() => {
    for (const waiting of [reply, ended]) waiting.catch(() => undefined)
    listening.abort()
  })
}
