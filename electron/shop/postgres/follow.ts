import { setTimeout as delay } from 'node:timers/promises'
import type { ShopArchive, ShopListener } from '../archive.ts'
import { dial, type Destination } from './dial.ts'
import { followingFrom } from '../following.ts'
import { listsAreOther } from './migrations/index.ts'
import type { ServerLine } from './server-line.ts'

export interface FollowTimes {
  /** How often it is asked whether anything was added that was not announced: a line may be dead without saying so. */
  readonly askEachMs: number
  /** How long until a cut line is tried again; longer each time, up to the second. */
  readonly retryMs: readonly [number, number]
}

/**
 * Follows by a line of its own on which the server announces that something was added, and never what: that is asked for by the last
 * change that was seen. So nothing is missed that came while the line was cut, and a server that announces nothing is followed too.
 */
export function followOn(
  destination: Destination,
  way: ServerLine,
  { changesAfter, lastChange }: Pick<ShopArchive, 'changesAfter' | 'lastChange'>,
  { askEachMs, retryMs: [least, most] }: FollowTimes,
) {
  return (after: number, { added, skipped, lists, connection }: ShopListener): (() => void) => {
    const stopped = new AbortController()
    const { signal } = stopped
    let last = after
    let asking: Promise<boolean> | null = null
    let again = false
    /** Whether it was looked how far the archive has come since the way was cut. */
    let hasLooked = false

    /** False where there was no answer. */
    async function askOnce(): Promise<boolean> {
      if (!hasLooked) {
        const there = await lastChange()
        if (!there.ok) return false
        hasLooked = true
        const from = followingFrom(last, there.value)
        if (from !== last) skipped?.(from < last ? 'set-back' : 'many')
        last = from
      }
      for (;;) {
        again = false
        const changes = await changesAfter(last)
        if (!changes.ok) return false
        for (const build of changes.value) {
          if (signal.aborted) return true
          last = Math.max(last, build.change)
          added(build)
        }
        if (changes.value.length === 0 && !again) return true
      }
    }

    /** One at a time, so that each is announced once. */
    function ask(): Promise<boolean> {
      again = true
      asking ??= askOnce().finally(() => (asking = null))
      return asking
    }

    async function listenOnce(): Promise<void> {
      const over = Promise.withResolvers<void>()
      const line = dial(destination, {
        connections: 1,
        onNotice: (payload) => (payload === listsAreOther ? lists?.() : void ask()),
        onClose: () => over.resolve(),
      })
      const stop = () => over.resolve()
      signal.addEventListener('abort', stop, { once: true })
      const timer = setInterval(() => void ask().then((answered) => answered || over.resolve()), askEachMs)
      timer.unref()
      try {
        await line`LISTEN ${line(`bedplate_${destination.address.shop}`)}`
        await ask()
        await over.promise
      } finally {
        clearInterval(timer)
        signal.removeEventListener('abort', stop)
        await line.end({ timeout: 0 }).catch(() => {})
      }
    }

    async function listen(): Promise<void> {
      for (let wait = least; !signal.aborted; wait = Math.min(wait * 2, most)) {
        hasLooked = false
        // Asked first: it opens the line and shows how it stands.
        if (await ask()) {
          wait = least
          await listenOnce().catch(() => {})
        }
        // Half of it by chance, so that fifty benches do not come at once to a server that has just started.
        await delay(wait * (0.5 + Math.random() / 2), undefined, { signal, ref: false }).catch(() => {})
      }
    }

    const unwatch = way.watch(connection)
    connection(way.connection())
    void listen()
    return () => {
      unwatch()
      stopped.abort()
    }
  }
}
