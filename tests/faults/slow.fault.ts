import { randomUUID } from 'node:crypto'
import { connect, type Socket } from 'node:net'
import { evolve, replay } from '../../core/builds/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { usualLimits } from '../../electron/local/limits.ts'
import { startLocalHost } from '../../electron/local/server.ts'
import { newToken } from '../../electron/local/token.ts'
import { openStore } from '../../electron/store/index.ts'
import { answersOn } from '../electron/answers.ts'
import { nextCommand } from '../electron/mechanic.ts'
import { chance } from './chance.ts'
import { found, type Fault } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'

const confirmations = 60
const largestPage = 4_000_000
/** As the limits are, with the waits of a test. */
const limits = { ...usualLimits, writeTimeoutMs: 1_000, checkEveryMs: 100, keepAliveTimeoutMs: 2_000 }

/** One way to hold a connection: `port` is the host's, `own` its name, `token` what a window of ours shows. */
type Holding = (socket: Socket, own: string, token: string, random: () => number) => void

const head = (own: string, ...more: readonly string[]): string =>
  [`Host: ${own}`, ...more, '', ''].join('\r\n')

/** Programs that take a place and give nothing back. */
const holdings: Readonly<Record<string, Holding>> = {
  'asks and never reads': (socket, own, _, random) => {
    for (let times = 0; times < 1 + 6 * random(); times += 1)
      socket.write(`GET /index.html HTTP/1.1\r\n${head(own)}`)
  },
  'asks with our key and never reads': (socket, own, token) => {
    const origin = [`Origin: http://${own}`, `x-bedplate-token: ${token}`, 'Content-Type: application/json']
    socket.write(
      `POST /request/engines.list HTTP/1.1\r\n${head(own, ...origin, 'Content-Length: 2')}{}`.repeat(8),
    )
  },
  'says nothing': () => undefined,
  'sends half a line': (socket, own) => void socket.write(`GET /index.html HTTP/1.1\r\nHost: ${own}\r\nX-`),
  'sends a body a byte at a time': (socket, own, token) => {
    const origin = [`Origin: http://${own}`, `x-bedplate-token: ${token}`, 'Content-Type: application/json']
    socket.write(`POST /request/builds.list HTTP/1.1\r\n${head(own, ...origin, 'Content-Length: 50000')}`)
    const timer = setInterval(() => socket.write(' '), 50)
    socket.once('close', () => clearInterval(timer))
  },
  'reads a little now and then': (socket, own) => {
    socket.write(`GET /index.html HTTP/1.1\r\n${head(own)}`)
    const timer = setInterval(() => socket.read(100), 50)
    socket.once('close', () => clearInterval(timer))
  },
}

export const faults: readonly Fault[] = [
  {
    name: 'slow readers',
    must: 'each confirmation of the window is answered and kept, while others hold connections and do not read or send',
    run: (seed) =>
      withFolder(async (folder) => {
        const random = chance(seed + 31)
        const opened = await openStore(folder, () => new Date())
        if (!opened.ok) throw new Error(opened.problem.code)
        const { answer, stop } = answersOn(opened.value, { now: () => new Date(), newId: randomUUID })
        const token = newToken()
        const pages = new Map([
          ['/index.html', { type: 'text/html', bytes: Buffer.alloc(largestPage, 0x61) }],
        ])
        const host = await startLocalHost({ pages, answer, token, limits })
        const own = `127.0.0.1:${host.port}`
        const sockets = new Set<Socket>()
        let over = false
        const counts = { held: 0, confirmed: 0, closedByHost: 0 }
        const hold = (): void => {
          const socket = connect({ host: '127.0.0.1', port: host.port })
          socket.pause()
          socket.on('error', () => undefined)
          socket.once('close', () => (counts.closedByHost += over ? 0 : 1))
          const names = Object.keys(holdings)
          holdings[names[Math.floor(random() * names.length)]!]!(socket, own, token, random)
          sockets.add(socket)
          counts.held += 1
        }
        const get = async (name: string, input: unknown): Promise<unknown> => {
          const response = await fetch(`http://${own}/request/${name}`, {
            method: 'POST',
            headers: {
              origin: `http://${own}`,
              'x-bedplate-token': token,
              'content-type': 'application/json',
            },
            body: JSON.stringify(input),
          })
          const reply = (await response.json()) as {
            ok: boolean
            value?: unknown
            problem?: { code: string }
          }
          if (!reply.ok) throw new Error(reply.problem?.code)
          return reply.value
        }
        const acknowledged = new Map<string, number>()
        const wrong: string[] = []
        try {
          const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
          const begun = (await get('builds.start', start)) as Output<'builds.start'>
          const read = readSpec(begun.specText)
          if (!read.ok) throw new Error('the spec cannot be read')
          let state = replay(begun.events)
          for (; counts.confirmed < confirmations; counts.confirmed += 1) {
            for (let more = 0; more < 5; more += 1) hold()
            const command = nextCommand(read.spec, state)
            const input = { build: begun.line.id, after: state.seq, person: 'Ana Ruiz', command }
            const { events } = (await get('builds.act', input)) as Output<'builds.act'>
            state = events.reduce(evolve, state)
            acknowledged.set(begun.line.id, state.seq)
          }
        } catch (error) {
          wrong.push(`confirmation ${counts.confirmed + 1}: ${String(error)}`)
        } finally {
          // A socket that does not read learns of the end only when it reads.
          for (const socket of sockets) socket.resume()
          for (let wait = 0; wait < 100 && counts.closedByHost === 0; wait += 1)
            await new Promise((resolve) => setTimeout(resolve, 100))
          over = true
          for (const socket of sockets) socket.destroy()
          await host.close()
          await stop()
          opened.value.close()
        }
        const kept = await lacksOf(folder, acknowledged)
        if (counts.closedByHost === 0)
          wrong.push('no connection was closed by the host, so this run shows nothing')
        return found({ ...counts, entries: kept.entries }, [...wrong, ...kept.lacks])
      }),
  },
]
