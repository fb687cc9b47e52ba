import { describe, expect, it } from 'vitest'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

describe('preferences', () => {
  it('are the first ones on a new bench', async () => {
    const { get } = asking(await store(folder()))
    expect(await get('preferences.read', {})).toMatchObject({
      person: '',
      torqueUnit: 'N·m',
      lengthUnit: 'mm',
    })
  })

  it('are kept one by one, over a new start too', async () => {
    const inFolder = folder()
    const first = await store(inFolder)
    const { get } = asking(first)
    await get('preferences.keep', { torqueUnit: 'lbf·ft' })
    expect(await get('preferences.keep', { person: 'Ana Ruiz' })).toMatchObject({ torqueUnit: 'lbf·ft' })
    first.close()
    const { get: later } = asking(await store(inFolder))
    expect(await later('preferences.read', {})).toMatchObject({ person: 'Ana Ruiz', torqueUnit: 'lbf·ft' })
  })

  it('give way to the first ones where a kept one no longer fits', async () => {
    const record = await store(folder())
    record.keepPreferences({ torqueUnit: 'stone', person: 'Ana Ruiz' })
    const { get } = asking(record)
    expect(await get('preferences.read', {})).toMatchObject({ person: 'Ana Ruiz', torqueUnit: 'N·m' })
  })

  it('follow the system where the kept language is none of the program, and refuse to keep one', async () => {
    const record = await store(folder())
    record.keepPreferences({ language: 'fr', person: 'Ana Ruiz' })
    const { ask, get } = asking(record)
    expect(await get('preferences.read', {})).toMatchObject({ person: 'Ana Ruiz', language: null })
    const kept = await ask('preferences.keep', { language: 'fr' as 'de' })
    expect(kept).toMatchObject({ ok: false, problem: { code: 'request-unreadable' } })
  })
})
