import type { Sql } from 'postgres'
import type { Outcome, Problem } from '../../../core/problem/index.ts'
import type { ShopConnection } from '../archive.ts'
import { problemOf } from '../fault.ts'
import { unfit } from '../unfit.ts'
import { dial, type Destination } from './dial.ts'
import { latestShopVersion } from './migrations/index.ts'
import { findThere } from './find-there.ts'

export interface ServerLine {
  connection(): ShopConnection
  /** Called at each change, until what it returns is called. */
  watch(listener: (connection: ShopConnection) => void): () => void
  /**
   * Asks one question. The line is opened, and what is there is looked at, when it is not open; a line that gives no answer is
   * thrown away, so that the next question begins with a new one.
   */
  ask<Value>(question: (sql: Sql) => Promise<Outcome<Value>>): Promise<Outcome<Value>>
  close(): Promise<void>
}

export interface ServerLineOptions {
  readonly now: () => Date
  /** How long an answer may take; a line on which nothing comes is cut for this program long before it is for TCP. */
  readonly mostAnswerMs: number
}

const connections = 2

export function openServerLine(
  destination: Destination,
  { now, mostAnswerMs }: ServerLineOptions,
): ServerLine {
  const { address } = destination
  const watching = new Set<(connection: ShopConnection) => void>()
  let connection: ShopConnection = { kind: 'untried' }
  let line: { readonly sql: Sql; readonly fit: Promise<Problem | null> } | null = null
  let closed = false

  function say(next: ShopConnection): void {
    connection = next
    for (const listener of watching) listener(next)
  }

  function cut(problem: Problem): void {
    const sql = line?.sql
    line = null
    void sql?.end({ timeout: 0 }).catch(() => {})
    if (connection.kind === 'cut' && connection.problem.code === problem.code) return
    say({ kind: 'cut', sinceUtc: now().toISOString(), problem })
  }

  function opened() {
    if (line !== null) return line
    const sql = dial(destination, { connections })
    const fit = findThere(sql, address.shop).then((found) => unfit(address, found, latestShopVersion))
    fit.catch(() => {}) // whoever asked hears of it
    return (line = { sql, fit })
  }

  return {
    connection: () => connection,
    watch(listener) {
      watching.add(listener)
      return () => void watching.delete(listener)
    },
    async ask(question) {
      if (closed) return { ok: false, problem: problemOf({ code: 'CONNECTION_ENDED' }, address) }
      const mine = opened()
      /** Another question may have cut the line already and opened the next. */
      const lost = (problem: Problem) => {
        if (line === mine && !closed) cut(problem)
        return { ok: false, problem } as const
      }
      let isFit = false
      try {
        return await within(mostAnswerMs, async () => {
          const fault = await mine.fit
          if (fault !== null) return lost(fault)
          isFit = true
          const answer = await question(mine.sql)
          if (line === mine && connection.kind !== 'open')
            say({ kind: 'open', sinceUtc: now().toISOString() })
          return answer
        })
      } catch (error) {
        const problem = problemOf(error, address, destination.password() !== null)
        // What the server answered to this one question says nothing about the line.
        return isFit && problem.code !== 'shop-unreachable' ? { ok: false, problem } : lost(problem)
      }
    },
    async close() {
      closed = true
      watching.clear()
      await line?.sql.end({ timeout: 1 }).catch(() => {})
    },
  }
}

/** Throws as a socket does that waits for nothing. */
async function within<Value>(ms: number, promised: () => Promise<Value>): Promise<Value> {
  let timer: NodeJS.Timeout | undefined
  const over = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(Object.assign(new Error('no answer'), { code: 'ETIMEDOUT' })), ms)
  })
  try {
    return await Promise.race([promised(), over])
  } finally {
    clearTimeout(timer)
  }
}
