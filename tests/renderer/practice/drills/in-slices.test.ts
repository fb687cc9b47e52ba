import { describe, expect, it } from 'vitest'
import { inSlices } from '../../../../renderer/practice/drills/in-slices.ts'

describe('a long calculation in slices', () => {
  it('lets what comes meanwhile have its turn, and then goes on to its result', async () => {
    let came = false
    setTimeout(() => (came = true), 0)
    function* untilSomethingCame() {
      while (!came) yield
      return 'result'
    }
    const result = await new Promise((resolve) => {
      inSlices(untilSomethingCame(), resolve)
    })
    expect(result).toBe('result')
  })

  it('ends without a result where it is cancelled', async () => {
    let parts = 0
    function* long() {
      for (parts = 0; parts < 1e9; parts += 1) yield
      return parts
    }
    const results: number[] = []
    const cancel = inSlices(long(), (result) => results.push(result))
    await new Promise((resolve) => setTimeout(resolve, 30))
    cancel()
    const before = parts
    await new Promise((resolve) => setTimeout(resolve, 30))
    expect([before > 0, parts === before, results]).toEqual([true, true, []])
  })
})
