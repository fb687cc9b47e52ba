import { afterEach, describe, expect, it, vi } from 'vitest'
import { done, refused } from '../../../core/problem/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { saveFile, type SaveOutcome } from '../../../renderer/parts/save-file.ts'
import { Saving } from '../../../renderer/parts/saving.svelte.ts'
import { twin } from '../twin.ts'

afterEach(() => vi.unstubAllGlobals())

/** Plays what a browser has for saving, and answers with the names under which it was asked to. */
function browser(): readonly string[] {
  const downloads: string[] = []
  const link = { href: '', download: '', click: () => downloads.push(link.download) }
  vi.stubGlobal('document', { createElement: () => link })
  vi.stubGlobal('URL', { createObjectURL: () => 'blob:1', revokeObjectURL: () => undefined })
  return downloads
}

function host(kind: 'desktop' | 'local', answer: Outcome<{ path: string | null }>) {
  const facts = {
    why: { code: 'hostByItself', facts: {} } as const,
    version: '0.1.0',
    dataFolder: '/data',
    problem: null,
  }
  return twin({ 'host.read': () => done({ host: kind, ...facts }), 'files.save': () => answer })
}

describe('a file that the window saves', () => {
  it('has the path under which the desktop host has put it on disk', async () => {
    const downloads = browser()
    const { client, requests } = host('desktop', done({ path: '/home/ana/order.csv' }))
    expect(await saveFile(client, 'order.csv', 'a,b')).toEqual({ kind: 'saved', path: '/home/ana/order.csv' })
    expect(requests.at(-1)).toEqual({ name: 'files.save', input: { fileName: 'order.csv', text: 'a,b' } })
    expect(downloads).toEqual([])
  })

  it('is not saved where no place was chosen, or it could not be written', async () => {
    browser()
    expect(await saveFile(host('desktop', done({ path: null })).client, 'order.csv', '')).toEqual({
      kind: 'no-place',
    })
    const full = host('desktop', refused('file-not-saved', { file: 'order.csv' }))
    expect(await saveFile(full.client, 'order.csv', '')).toMatchObject({
      kind: 'refused',
      problem: { code: 'file-not-saved', facts: { file: 'order.csv' } },
    })
  })

  it('is the browser’s to save in the local host, which is sent nothing of it', async () => {
    const downloads = browser()
    const { client, requests } = host('local', refused('save-by-browser', {}))
    expect(await saveFile(client, 'order.csv', 'a,b')).toEqual({
      kind: 'with-browser',
      fileName: 'order.csv',
    })
    expect(downloads).toEqual(['order.csv'])
    expect(requests.map(({ name }) => name)).toEqual(['host.read'])
  })
})

describe('saving', () => {
  const saved: SaveOutcome = { kind: 'saved', path: '/home/ana/order.csv' }

  it('says nothing of a file before it is saved, nor what became of the one before', async () => {
    const saving = new Saving()
    await saving.run(() => Promise.resolve({ kind: 'no-place' }))
    const { promise, resolve } = Promise.withResolvers<SaveOutcome>()
    const running = saving.run(() => promise)
    expect(saving.outcome).toBeNull()
    resolve(saved)
    await running
    expect(saving.outcome).toEqual(saved)
    saving.close()
    expect(saving.outcome).toBeNull()
  })

  it('takes a second press meanwhile for the same one, and the next one for another', async () => {
    const saving = new Saving()
    const { promise, resolve } = Promise.withResolvers<SaveOutcome>()
    let saves = 0
    const save = () => {
      saves += 1
      return promise
    }
    const running = saving.run(save)
    await saving.run(save)
    resolve(saved)
    await running
    expect(saves).toBe(1)
    await saving.run(save)
    expect(saves).toBe(2)
  })
})
