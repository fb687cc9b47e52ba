import { expect, it } from 'vitest'
import type { Preferences } from '../../../core/contract/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { Bench } from '../../../renderer/bench/bench.svelte.ts'
import { memoryHost } from '../../../renderer/gallery/memory-host.ts'
import { twin } from '../twin.ts'

function buildIn(bench: Bench) {
  if (bench.place.at !== 'build') throw new Error('no build is open')
  return bench.place.openBuild
}

it('the last place of a step is done from one of two windows, and refused in words in the other', async () => {
  const host = memoryHost({ preferences: { person: 'Ana Ruiz' } satisfies Partial<Preferences> })
  const [first, second] = [new Bench(twin(host).client), new Bench(twin(host).client)]
  await first.open()
  await first.newBuilds.start('moor-flat-4', 'Trolley', '', 'Ana Ruiz', false)
  await second.open()
  const [here, there] = [buildIn(first), buildIn(second)]
  const plate = { type: 'do-place', step: 'plate', place: 'number', round: 1, note: '4711' } as const
  expect(await there.finishStep(plate)).toBe(true)
  expect(await here.finishStep({ ...plate, note: '4712' })).toBe(false)
  expect(here.problem && sentenceOf(here.problem)).toContain('its last entry is now number 2')
  // What the other window noted stands, and is shown here.
  expect(here.events).toEqual(there.events)
  expect(await here.act({ ...plate, note: '4712' })).toBe(false)
  expect(here.problem && sentenceOf(here.problem)).toContain('is done already')
  expect(here.events.filter(({ event }) => event.type === 'place-done')).toHaveLength(1)
})
