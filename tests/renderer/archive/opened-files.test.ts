import { describe, expect, it } from 'vitest'
import { done, refused } from '../../../core/problem/index.ts'
import type { OpenedFile } from '../../../core/contract/index.ts'
import { OpenedFiles } from '../../../renderer/archive/opened-files.svelte.ts'
import { lineOf, twin } from '../twin.ts'

const build = (number: number, text: string): OpenedFile => ({
  number,
  fileName: `${number}.bedplate`,
  content: { kind: 'build', text },
})

describe('what the program is asked to open', () => {
  it('is taken in one after the other, and nothing good is lost for what is not', async () => {
    const queue: OpenedFile[] = [
      build(1, 'not an export'),
      build(2, 'good'),
      { number: 3, fileName: 'own.json', content: { kind: 'engine', id: 'own', name: 'Own engine' } },
      { number: 4, fileName: 'a.bedplate-spec', content: { kind: 'spec', text: 'altered' } },
    ]
    const { client, requests } = twin({
      'files.opened': ({ after }) =>
        done({ file: queue.find(({ number }) => number > after) ?? null, more: false }),
      'builds.import': ({ text }) =>
        text === 'good' ? done({ kind: 'added', line: lineOf(1) }) : refused('import-not-ours', {}),
      'library.import': () => refused('spec-file-altered', {}),
    })
    const opened = new OpenedFiles(client, () => 'Ada')
    const arrived: number[] = []
    await opened.follow(({ number }) => arrived.push(number))
    expect(arrived).toEqual([1, 2, 3, 4])
    expect(opened.arrivals).toMatchObject([
      { fileName: '1.bedplate', result: { kind: 'refused', problem: { code: 'import-not-ours' } } },
      { fileName: '2.bedplate', result: { kind: 'build', outcome: { kind: 'added' } } },
      { fileName: 'own.json', result: { kind: 'engine', name: 'Own engine' } },
      { fileName: 'a.bedplate-spec', result: { kind: 'refused', problem: { code: 'spec-file-altered' } } },
    ])
    expect(requests.find(({ name }) => name === 'library.import')?.input).toEqual({
      text: 'altered',
      person: 'Ada',
    })
    expect(requests.filter(({ name }) => name === 'files.opened').map(({ input }) => input)).toEqual(
      [0, 1, 2, 3, 4].map((after) => ({ after })),
    )
    opened.close(2)
    expect(opened.arrivals.map(({ number }) => number)).toEqual([1, 3, 4])
  })

  it('is asked for no more where the host is lost or does not know the request', async () => {
    const { client, requests } = twin({})
    await new OpenedFiles(client, () => '').follow(() => undefined)
    expect(requests).toHaveLength(1)
  })
})
