import { describe, expect, it } from 'vitest'
import type { Client } from '../../../core/contract/index.ts'
import { EnginePictures } from '../../../renderer/bench/engine-pictures.svelte.ts'
import { en } from '../../../core/words/index.ts'
import { memoryClient } from '../../../renderer/gallery/memory-client.ts'
import { memoryHost } from '../../../renderer/gallery/memory-host.ts'

function counted() {
  const client = memoryClient(memoryHost())
  const requests: unknown[] = []
  const counting: Client = {
    request(name, input) {
      requests.push(input)
      return client.request(name, input)
    },
  }
  return { requests, pictures: new EnginePictures(counting, en, () => Promise.resolve()) }
}

describe('the pictures of engines', () => {
  it('are drawn when they are asked for, each once', async () => {
    const { requests, pictures } = counted()
    expect(pictures.of('skerry-3')).toBeNull()
    await Promise.all([pictures.ask('skerry-3'), pictures.ask('skerry-3')])
    await pictures.ask('skerry-3')
    const [light, dark] = (['light', 'dark'] as const).map((theme) => pictures.of('skerry-3')?.(theme) ?? '')
    expect(light?.match(/<(path|circle|ellipse|rect|line|poly)/g)?.length).toBeGreaterThan(20)
    expect(dark).not.toBe(light)
    expect(requests).toEqual([{ id: 'skerry-3' }])
  })

  it('are none for an engine that cannot be read, and the next one is drawn all the same', async () => {
    const { pictures } = counted()
    void pictures.ask('ketch-1')
    await pictures.ask('tarn-4')
    expect(pictures.of('ketch-1')).toBeNull()
    expect(pictures.of('tarn-4')).not.toBeNull()
  })

  it('are drawn one after the other, only when there is time', async () => {
    let begin: (value?: unknown) => void = () => undefined
    const pictures = new EnginePictures(
      memoryClient(memoryHost()),
      en,
      () => new Promise((done) => (begin = done)),
    )
    void pictures.ask('skerry-3')
    const both = pictures.ask('tarn-4')
    await Promise.resolve()
    begin()
    await expect.poll(() => pictures.of('skerry-3')).not.toBeNull()
    expect(pictures.of('tarn-4')).toBeNull()
    begin()
    await both
    expect(pictures.of('tarn-4')).not.toBeNull()
  })
})
