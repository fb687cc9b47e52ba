import { describe, expect, it, vi } from 'vitest'
import type { Answering } from '../../../electron/requests/index.ts'

vi.mock('electron', () => ({ ipcMain: { handle: () => undefined } }))
const { answerText } = await import('../../../electron/desktop/ipc.ts')

const asked: unknown[] = []
const answer: Answering = (name, input) => {
  asked.push([name, input])
  return Promise.resolve({ ok: true, value: [] })
}

describe('a request over the bridge', () => {
  it('comes as JSON text, as the local host is sent it', async () => {
    expect(await answerText(answer, 'builds.find', '{"words":"ferry"}')).toEqual({ ok: true, value: [] })
    expect(asked).toEqual([['builds.find', { words: 'ferry' }]])
  })

  it.each([
    ['a name that is no text', 7, '{}', 'request-unknown'],
    ['an input that is no text', 'builds.find', { words: '' }, 'request-unknown'],
    ['a text that is not JSON', 'builds.find', '{words}', 'request-unreadable'],
    ['no input', 'builds.find', undefined, 'request-unknown'],
  ])('is refused with %s', async (_, name, text, code) => {
    asked.length = 0
    expect(await answerText(answer, name, text)).toMatchObject({ ok: false, problem: { code } })
    expect(asked).toEqual([])
  })
})
