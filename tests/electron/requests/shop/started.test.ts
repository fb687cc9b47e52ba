import { describe, expect, it } from 'vitest'
import { openRequests } from '../../../../electron/requests/index.ts'
import { engineFolder } from '../../../engine-files.ts'
import { folder, value } from '../../bench.ts'

const specs = engineFolder(['skerry-3'])

describe('a bench that is started with a name', () => {
  it('is called so, and keeps the one it has where that is none', async () => {
    const told: string[] = []
    const facts = {
      host: 'local',
      why: { code: 'hostByItself', facts: {} },
      version: '0.1.0',
      dataFolder: folder(),
    } as const
    const start = async (benchName: string) => {
      const { answer, close } = value(
        await openRequests(facts, specs, (line) => told.push(line), { benchName }),
      )
      const read = await answer('shop.read', {})
      await close()
      return read
    }
    expect(await start('Bench by the door')).toMatchObject({
      value: { bench: { name: 'Bench by the door' } },
    })
    expect(told).toEqual([])
    expect(await start(' ')).toMatchObject({ value: { bench: { name: 'Bench by the door' } } })
    expect(told).toHaveLength(1)
  })
})
