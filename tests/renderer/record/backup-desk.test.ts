import { describe, expect, it } from 'vitest'
import type { BackupList } from '../../../core/contract/index.ts'
import { done, refused, sentenceOf } from '../../../core/problem/index.ts'
import { BackupDesk } from '../../../renderer/record/backup-desk.svelte.ts'
import { twin } from '../twin.ts'

const name = 'bedplate-20260302T073000Z-2-122-91c4e07f2b5d83aa.sqlite'
const one: BackupList = {
  backups: [
    {
      name,
      at: '2026-03-02T07:30:00Z',
      builds: 2,
      entries: 122,
      head: '91c4e07f2b5d83aa',
      sizeBytes: 90_000,
      place: 'data-folder',
      own: true,
      broken: 0,
    },
  ],
  secondFolder: null,
  running: false,
  trouble: null,
}
const none: BackupList = { ...one, backups: [] }

describe('the backups of the record', () => {
  it('are not known until the host has reported them', async () => {
    const { client } = twin({ 'backups.list': () => done(none) })
    const desk = new BackupDesk(client)
    expect(desk.list).toBeNull()
    await desk.read()
    expect(desk.list).toEqual(none)
  })

  it('are one more after one was made, and it shows that one is being made', async () => {
    const { client, hold } = twin({ 'backups.make': () => done(one) })
    const desk = new BackupDesk(client)
    const release = hold()
    const made = desk.make()
    expect(desk.doing).toBe('making')
    release()
    await made
    expect([desk.doing, desk.list]).toEqual([null, one])
  })

  it('stay listed where a second folder is refused, with the reason', async () => {
    const { client } = twin({
      'backups.list': () => done(one),
      'backups.keep-in': ({ folder }) =>
        folder === '/media/share'
          ? done({ ...one, secondFolder: folder })
          : refused('backup-folder-wrong', { folder: folder ?? '', fault: 'closed' }, 'folder'),
    })
    const desk = new BackupDesk(client)
    await desk.read()
    expect(await desk.keepIn('/proc')).toBe(false)
    expect(sentenceOf(desk.problem!)).toContain('/proc')
    expect(desk.list).toEqual(one)
    expect(await desk.keepIn('/media/share')).toBe(true)
    expect([desk.problem, desk.list?.secondFolder]).toEqual([null, '/media/share'])
  })
})

describe('putting a backup in place', () => {
  it('tells under what name the file that was there is kept', async () => {
    const { client, requests } = twin({
      'backups.restore': () => done({ kept: 'kept-20260309T080000Z.sqlite' }),
    })
    const desk = new BackupDesk(client)
    await desk.restore(name)
    expect(requests).toEqual([{ name: 'backups.restore', input: { name } }])
    expect(desk.restored).toEqual({ name, kept: 'kept-20260309T080000Z.sqlite' })
  })

  it('says why where it cannot be, and nothing was put in place', async () => {
    const { client } = twin({ 'backups.restore': () => refused('backup-unusable', { name }) })
    const desk = new BackupDesk(client)
    await desk.restore(name)
    expect(desk.problem?.code).toBe('backup-unusable')
    expect([desk.doing, desk.restored]).toEqual([null, null])
  })
})
