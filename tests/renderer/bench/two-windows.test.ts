import { describe, expect, it } from 'vitest'
import type { LibraryLine, Preferences } from '../../../core/contract/index.ts'
import { done, sentenceOf } from '../../../core/problem/index.ts'
import { Bench } from '../../../renderer/bench/bench.svelte.ts'
import type { OpenBuild } from '../../../renderer/bench/open-build.svelte.ts'
import type { WindowNews, OtherWindows } from '../../../renderer/bench/other-windows.ts'
import type { MemoryHandlers } from '../../../renderer/gallery/memory-client.ts'
import { memoryHost } from '../../../renderer/gallery/memory-host.ts'
import { twin } from '../twin.ts'

const caseMarks = { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' } as const
const crankMarks = { type: 'note-marks', step: 'crank-marks', typed: 'G G F H' } as const

/** Windows of one browser on one host; what one tells is heard by the others when `deliver` is called. */
function browser() {
  const listeners: (() => void)[] = []
  const ears: ((confirmed: WindowNews) => void)[] = []
  const windowOf = (): OtherWindows => {
    let own: ((confirmed: WindowNews) => void) | null = null
    return {
      announce: (confirmed) => {
        for (const ear of ears) if (ear !== own) listeners.push(() => ear(confirmed))
      },
      listen: (listen) => {
        own = listen
        ears.push(listen)
      },
    }
  }
  /** Also what is told while it is delivered; the host in memory answers within a few turns. */
  async function deliver() {
    for (let each = listeners.shift(); each; each = listeners.shift()) each()
    await settled()
  }
  return { windowOf, deliver }
}

async function settled() {
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve()
}

function buildIn(bench: Bench): OpenBuild {
  if (bench.place.at !== 'build') throw new Error('no build is open')
  return bench.place.openBuild
}

/** One build of the Skerry in two windows, nothing done yet. */
async function twoWindows(also: MemoryHandlers = {}) {
  const host = {
    ...memoryHost({ preferences: { person: 'Ana Ruiz' } satisfies Partial<Preferences> }),
    ...also,
  }
  const { windowOf, deliver } = browser()
  const [one, two] = [twin(host), twin(host)]
  const first = new Bench(one.client, windowOf())
  await first.open()
  await first.newBuilds.start('skerry-3', 'Ferry, port engine', 'F-201', 'Ana Ruiz', false)
  const second = new Bench(two.client, windowOf())
  await second.open()
  return { here: buildIn(first), there: buildIn(second), first, second, one, deliver }
}

describe('two windows on one build', () => {
  it('both say that the library has a newer revision, published in one of them, and the build stays as it is', async () => {
    const published: LibraryLine[] = []
    const { here, there, first, deliver } = await twoWindows({
      'builds.since': () => done({ events: [], newer: published.at(-1) }),
    })
    const before = there.specText
    expect([here.newer, there.newer]).toEqual([null, null])
    published.push({
      ...{ engine: 'skerry-3', name: 'Skerry 3', family: 'split-horizontal', cylinders: 3, demo: false },
      ...{ revision: 2, revisionName: '2', publishedBy: 'Ana Ruiz', publishedAt: '2026-03-09T07:00:00.000Z' },
      ...{ enteredBy: 'Ana Ruiz', checkedBy: null, builds: 1 },
    })
    await first.news.announceRevision()
    await deliver()
    expect([here.newer?.revision, there.newer?.revision]).toEqual([2, 2])
    expect([there.specText, there.elsewhere]).toEqual([before, null])
  })

  it('show the same after each confirmation in either', async () => {
    const { here, there, deliver } = await twoWindows()
    expect(await there.act(caseMarks)).toBe(true)
    expect(here.events).toHaveLength(1)
    await deliver()
    expect(here.events).toEqual(there.events)
    expect(here.step?.id).toBe('crank-marks')
    expect(await here.act(crankMarks)).toBe(true)
    await deliver()
    expect(there.events).toEqual(here.events)
    expect(there.step?.id).toBe('rod-marks')
  })

  it('say how many entries came from the other one, until something is done here', async () => {
    const { here, there, deliver } = await twoWindows()
    await there.act(caseMarks)
    await there.act(crankMarks)
    await deliver()
    expect(here.elsewhere).toEqual({ entries: 2, person: 'Ana Ruiz', wasBegun: false })
    await here.act({ type: 'note-marks', step: 'rod-marks', typed: '4 5 4' })
    expect(here.elsewhere).toBeNull()
  })

  it('refuse what was decided on an older state, in words, and show what is there now', async () => {
    const { here, there } = await twoWindows()
    await there.act(caseMarks)
    expect(await here.act(crankMarks)).toBe(false)
    expect(here.problem && sentenceOf(here.problem)).toContain('its last entry is now number 2')
    expect(here.events).toEqual(there.events)
    expect(await here.act(crankMarks)).toBe(true)
    expect(here.events).toHaveLength(3)
  })

  it('keep the step at which something is typed, until it is done', async () => {
    const { here, there, deliver } = await twoWindows()
    here.begin()
    await there.act(crankMarks)
    await deliver()
    expect(here.step?.id).toBe('case-marks')
    expect(here.elsewhere).toMatchObject({ wasBegun: true })
    await there.act(caseMarks)
    await deliver()
    expect(here.step?.id).toBe('rod-marks')
  })

  it('show the step that the build is at when nothing is typed', async () => {
    const { here, there, deliver } = await twoWindows()
    there.goTo('rod-marks')
    await there.act({ type: 'note-marks', step: 'rod-marks', typed: '4 5 4' })
    await deliver()
    expect(here.step?.id).toBe('case-marks')
    expect(here.state.marks['big-ends']?.housing).toEqual(['4', '5', '4'])
  })

  it('follow a build that is made void', async () => {
    const { here, there, deliver } = await twoWindows()
    await there.act({ type: 'void-build', reason: 'Wrong engine' })
    await deliver()
    expect(here.state.voided).toBe(true)
    expect(await here.act(caseMarks)).toBe(false)
    expect(here.problem?.code).not.toBe('build-moved-on')
  })

  it('take in what came while an own confirmation was being saved, each entry once', async () => {
    const { here, there, one, deliver } = await twoWindows()
    const open = one.hold()
    const saved = here.act(caseMarks)
    const following = here.follow()
    open()
    expect(await saved).toBe(true)
    await following
    await deliver()
    await there.act(crankMarks)
    await Promise.all([here.follow(), here.follow(), here.follow()])
    await deliver()
    expect(here.events.map(({ seq }) => seq)).toEqual([1, 2, 3])
  })

  it('list a build that the other one began', async () => {
    const { first, second, deliver } = await twoWindows()
    await first.showEngines()
    expect(first.builds).toHaveLength(1)
    await second.newBuilds.start('holm-2', 'Tram 4', '', 'Ana Ruiz', false)
    await deliver()
    expect(first.builds.map(({ name }) => name)).toEqual(['Tram 4', 'Ferry, port engine'])
  })
})
