import { describe, expect, it, vi } from 'vitest'
import { mostBytesOf } from '../../../core/contract/index.ts'
import type { AnswerRequest } from '../../../electron/requests/index.ts'

vi.mock('electron', () => ({ ipcMain: { handle: () => undefined } }))
const { answerText } = await import('../../../electron/desktop/ipc.ts')

const requests: unknown[] = []
const answer: AnswerRequest = (name, input) => {
  requests.push([name, input])
  return Promise.resolve({ ok: true, value: [] })
}

describe('a request over the bridge', () => {
  it('comes as JSON text, as the local host is sent it', async () => {
    expect(await answerText(answer, 'builds.find', '{"words":"ferry"}')).toEqual({ ok: true, value: [] })
    expect(requests).toEqual([['builds.find', { words: 'ferry' }]])
  })

  it.each([
    ['a name that is no text', 7, '{}', 'request-unknown'],
    ['an input that is no text', 'builds.find', { words: '' }, 'request-unknown'],
    ['a text that is not JSON', 'builds.find', '{words}', 'request-unreadable'],
    ['no input', 'builds.find', undefined, 'request-unknown'],
  ])('is refused with %s', async (_, name, text, code) => {
    requests.length = 0
    expect(await answerText(answer, name, text)).toMatchObject({ ok: false, problem: { code } })
    expect(requests).toEqual([])
  })

  it('is not parsed where it is longer than the request can be, as in the local host', async () => {
    requests.length = 0
    const longest = mostBytesOf('builds.find')
    const ofLength = (length: number) => `{"words":"${'a'.repeat(length - 12)}"}`
    expect(ofLength(longest)).toHaveLength(longest)
    expect((await answerText(answer, 'builds.find', ofLength(longest))).ok).toBe(true)
    expect(requests).toHaveLength(1)
    expect(await answerText(answer, 'builds.find', ofLength(longest + 1))).toMatchObject({
      ok: false,
      problem: { code: 'request-too-large' },
    })
    expect(requests).toHaveLength(1)
  })
})
