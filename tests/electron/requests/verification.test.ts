import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { alter } from '../alter.ts'
import { append, buildId, fitted, folder, otherBuildId, startBuild, store } from '../bench.ts'
import { asking } from './asking.ts'

/** A record of two builds, changed past its guards. */
async function recordWith(change: string) {
  const inFolder = folder()
  const record = await store(inFolder)
  startBuild(record)
  append(
    record,
    1,
    Array.from({ length: 300 }, (_, at) => fitted(`part-${at}`)),
  )
  startBuild(record, otherBuildId)
  record.close()
  alter(inFolder, change)
  return asking(await store(inFolder))
}

async function verified(change: string, build: string | null = null) {
  const { get } = await recordWith(change)
  await get('verification.start', { build })
  await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
  const outcome = await get('verification.read', {})
  if (outcome.state !== 'done') throw new Error('it is not done')
  return outcome
}

describe('verifying the archive', () => {
  it('finds nothing where everything is as it was confirmed, and says what was verified', async () => {
    expect(await verified('')).toMatchObject({ builds: 2, entries: 302, breaks: [] })
  })

  it.each([
    [
      'an altered entry',
      "UPDATE event SET body = replace(body, 'part-57', 'part-58') WHERE seq = 59",
      'Entry 59',
    ],
    [
      'an altered hash',
      "UPDATE event SET sha256 = replace(sha256, substr(sha256, 1, 1), 'g') WHERE seq = 100",
      'Entry 100',
    ],
    ['a missing entry', 'DELETE FROM event WHERE seq = 7', 'Entry 7'],
    ['all entries missing', `DELETE FROM event WHERE build = '${buildId}'`, 'Entry 1'],
    ['an altered spec', "UPDATE spec SET text = text || ' '", 'spec'],
    [
      'a build that is said to be finished',
      `UPDATE build SET finished = 1 WHERE id = '${buildId}'`,
      'finished',
    ],
    [
      'a build that is said not to count',
      `UPDATE build SET voided = 1 WHERE id = '${buildId}'`,
      'whether it counts',
    ],
    ['another name in the list', `UPDATE build SET name = 'Yacht' WHERE id = '${buildId}'`, 'its name'],
    ['another serial number', `UPDATE build SET serial = 'F-202' WHERE id = '${buildId}'`, 'serial number'],
  ])('finds %s', async (_, change, words) => {
    const { breaks } = await verified(change)
    expect(sentenceOf(breaks[0]!.problem)).toContain(words)
    expect(breaks[0]?.number).toMatch(/^2026-00[12]$/)
  })

  it('finds a build that was removed whole, by its number', async () => {
    const deletions = [
      `DELETE FROM event WHERE build = '${buildId}'`,
      `DELETE FROM build WHERE id = '${buildId}'`,
    ]
    const { breaks } = await verified(deletions.join(';'))
    expect(breaks.map(({ problem }) => sentenceOf(problem)).join()).toContain('2026-001 was given')
  })

  it('finds a build that the list has lost, by the name its first entry gave it', async () => {
    const { breaks, lists } = await verified(`DELETE FROM build WHERE id = '${buildId}'`)
    expect(lists).toBe(true)
    expect(breaks[0]).toMatchObject({
      build: buildId,
      number: 'Ferry, port engine, F-201',
      problem: { code: 'build-unlisted' },
    })
  })

  it('makes the lists again from the entries, and finds nothing more', async () => {
    const { get } = await recordWith(
      [
        `UPDATE build SET name = 'Yacht', finished = 1, voided = 1 WHERE id = '${buildId}'`,
        `DELETE FROM build WHERE id = '${otherBuildId}'`,
        'DELETE FROM mention',
      ].join(';'),
    )
    expect(await get('record.rebuild-lists', {})).toEqual({ changed: 2 })
    await get('verification.start', { build: null })
    await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
    expect(await get('verification.read', {})).toMatchObject({ breaks: [], builds: 2, lists: false })
    expect((await get('builds.list', {})).map(({ name, finished }) => [name, finished])).toEqual([
      ['Ferry, port engine', false],
      ['Ferry, port engine', false],
    ])
    expect(await get('record.rebuild-lists', {})).toEqual({ changed: 0 })
  })

  it('looks at one build alone where one is named', async () => {
    const change = 'DELETE FROM event WHERE seq = 7'
    expect(await verified(change, otherBuildId)).toMatchObject({ builds: 1, entries: 1, breaks: [] })
    expect((await verified(change, buildId)).breaks).toHaveLength(1)
  })

  it('gives the code on the sheet of a build that is verified alone', async () => {
    const { get, begin } = asking(await store(folder()))
    const { events, line } = await begin()
    await get('verification.start', { build: line.id })
    await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
    expect(await get('verification.read', {})).toMatchObject({ head: events.at(-1)?.hash.slice(0, 16) })
  })

  it('lets others be answered after each hundred entries', async () => {
    const { get } = await recordWith('')
    let answered = 0
    await get('verification.start', { build: null })
    while ((await get('verification.read', {})).state === 'running') {
      answered += 1
      await new Promise((resolve) => setImmediate(resolve))
    }
    expect(answered).toBeGreaterThanOrEqual(302 / 100)
  })

  it('is refused for a build that is not there', async () => {
    const { ask } = await recordWith('')
    const answer = await ask('verification.start', { build: '01956f6c-8a00-7000-8000-00000000ffff' })
    expect(answer).toMatchObject({ ok: false, problem: { code: 'build-unknown' } })
  })

  it('can be stopped, and begun again', async () => {
    const { get } = await recordWith('')
    expect(await get('verification.read', {})).toEqual({ state: 'none' })
    expect(await get('verification.start', { build: null })).toMatchObject({ state: 'running' })
    expect(await get('verification.stop', {})).toEqual({ state: 'stopped', build: null })
    await new Promise((resolve) => setTimeout(resolve, 50))
    expect(await get('verification.read', {})).toEqual({ state: 'stopped', build: null })
    await get('verification.start', { build: null })
    await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
  })
})
