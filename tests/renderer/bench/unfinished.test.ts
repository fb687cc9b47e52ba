import { describe, expect, it } from 'vitest'
import { firstPreferences, preferences, type Preferences } from '../../../core/contract/index.ts'
import { done } from '../../../core/problem/index.ts'
import { Bench } from '../../../renderer/bench/bench.svelte.ts'
import { twin } from '../twin.ts'

const build = '01956f6c-8a00-7000-8000-000000000001'
const atFirst: Preferences = { ...firstPreferences, person: 'R. Halloran', theme: 'light' }

function begun(swings: number) {
  const handle = { standing: 0, room: 45, grip: 'ratchet', pull: 'caps/0', reached: null, swings } as const
  return { build, handle, order: null }
}

describe('what is begun and not confirmed', () => {
  it('is kept one after the other, and what came in between is left to the newest', async () => {
    let kept = atFirst
    const { client, requests, hold } = twin({
      'preferences.read': () => done(kept),
      'preferences.keep': (change) => done((kept = preferences.parse({ ...kept, ...change }))),
    })
    const bench = new Bench(client)
    const open = hold()
    const first = bench.unfinished.keep(begun(1))
    for (const swings of [2, 3, 4]) void bench.unfinished.keep(begun(swings))
    open()
    await first
    const swings = requests.map(({ input }) => (input as Preferences).unfinished[0]?.handle.swings)
    expect(swings).toEqual([1, 4])
    expect(bench.unfinished.in(build)?.handle.swings).toBe(4)
    await bench.unfinished.keep(begun(5))
    expect(bench.unfinished.in(build)?.handle.swings).toBe(5)
    expect(bench.unfinished.in(build.replace(/1$/, '2'))).toBeNull()
  })
})
