import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Client } from '../../../core/contract/index.ts'
import { done } from '../../../core/problem/index.ts'
import { PracticeDesk } from '../../../renderer/practice/practice-desk.svelte.ts'
import { engineFile } from '../../engine-files.ts'

const textOf = (id: string) => readFileSync(engineFile(id), 'utf8')

/** A desk whose host answers what an engine is only when it is let. */
function slowDesk() {
  const waiting = new Map<string, () => void>()
  const request = (name: string, input: { readonly id: string }) =>
    name === 'engines.read'
      ? new Promise((answer) => waiting.set(input.id, () => answer(done({ specText: textOf(input.id) }))))
      : Promise.resolve({ ok: false, problem: null })
  const desk = new PracticeDesk({ request } as unknown as Client, () => 'Ada Brook')
  return { desk, answer: (id: string) => waiting.get(id)!() }
}

describe('choosing an engine to practise on', () => {
  it('offers no drill of the one before while the next one is read', async () => {
    const { desk, answer } = slowDesk()
    const first = desk.choose('skerry-3')
    answer('skerry-3')
    expect((await first)?.id).toBe('skerry-3')
    expect(desk.drills.length).toBeGreaterThan(0)
    const next = desk.choose('tarn-4')
    expect([desk.chosen, desk.spec, desk.drills]).toEqual(['tarn-4', null, []])
    answer('tarn-4')
    expect((await next)?.id).toBe('tarn-4')
    expect(desk.drills.every(({ engine }) => engine === 'tarn-4')).toBe(true)
  })

  it('keeps the one that was chosen last, whichever is read last', async () => {
    const { desk, answer } = slowDesk()
    const [early, late] = [desk.choose('skerry-3'), desk.choose('tarn-4')]
    answer('tarn-4')
    await late
    answer('skerry-3')
    expect(await early).toBeNull()
    expect([desk.chosen, desk.spec?.id]).toEqual(['tarn-4', 'tarn-4'])
  })
})
