import { describe, expect, it } from 'vitest'
import type { Input } from '../../../core/contract/index.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const ana = { id: null, name: 'Ana Ruiz', role: 'mechanic', by: null } as const
const bo = { id: null, name: 'Bo Lind', role: 'apprentice', by: null } as const

async function shop(...people: readonly Input<'people.keep'>[]) {
  const record = await store(folder())
  let seconds = 0
  const host = asking(record, {
    nowMs: () => (seconds += 1) * 1000,
    now: () => new Date('2026-03-02T07:30:00Z'),
  })
  for (const person of people) await host.get('people.keep', person)
  const list = await host.get('people.list', {})
  const idOf = (name: string) => list.find((person) => person.name === name)?.id ?? ''
  const start = (person: string) =>
    host.ask('builds.start', { engine: 'skerry-3', name: 'Ferry', serial: '', person })
  return { ...host, record, idOf, start }
}

describe('the people of a bench', () => {
  it('are listed by name, with what they have and never what it is', async () => {
    const { get } = await shop({ ...bo, badge: 'B-77' }, { ...ana, pin: '4711' })
    const list = await get('people.list', {})
    expect(list).toMatchObject([
      { name: 'Ana Ruiz', role: 'mechanic', hasPin: true, hasBadge: false, present: false },
      { name: 'Bo Lind', role: 'apprentice', hasPin: false, hasBadge: true, present: true },
    ])
    expect(JSON.stringify(list)).not.toMatch(/4711|B-77/)
  })

  it('need nothing as long as the shop wants nothing: any name can be typed', async () => {
    const { start } = await shop()
    expect((await start('A. Newcomer')).ok).toBe(true)
  })

  it('are known by what a badge types', async () => {
    const { get, ask } = await shop({ ...bo, badge: '  004417;2 ' })
    expect(await get('people.enter', { who: { badge: '004417;2' }, pin: null })).toMatchObject({
      name: 'Bo Lind',
    })
    expect(await ask('people.enter', { who: { badge: '004418' }, pin: null })).toMatchObject({
      ok: false,
      problem: { code: 'badge-unknown' },
    })
  })

  it.each<[string, Partial<Input<'people.keep'>>, string]>([
    ['the name of another', { name: 'Ana Ruiz ' }, 'person-twice'],
    ['no name', { name: ' ' }, 'person-missing'],
    ['the badge of another', { badge: 'A-1' }, 'badge-twice'],
    ['a PIN of three digits', { pin: '123' }, 'pin-too-short'],
    ['an id that is not there', { id: '01956f6c-8a00-7000-8000-00000000ffff' }, 'person-unknown'],
  ])('are not kept with %s', async (_, change, code) => {
    const { ask, get } = await shop({ ...ana, badge: 'A-1' })
    expect(await ask('people.keep', { ...bo, ...change })).toMatchObject({ ok: false, problem: { code } })
    expect(await get('people.list', {})).toHaveLength(1)
  })

  it('keep badge and PIN when only the name is changed', async () => {
    const { get, idOf } = await shop({ ...bo, badge: 'B-1', pin: '4711' })
    const [person] = await get('people.keep', { ...bo, id: idOf('Bo Lind'), name: 'Bo Lindh' })
    expect(person).toMatchObject({ name: 'Bo Lindh', hasBadge: true, hasPin: true })
  })
})

describe('a PIN', () => {
  it('must be given before an entry is made under its name, once', async () => {
    const { start, get, ask, idOf } = await shop({ ...ana, pin: '4711' })
    expect(await start('Ana Ruiz')).toMatchObject({ ok: false, problem: { code: 'person-not-proven' } })
    const who = { person: idOf('Ana Ruiz') }
    expect(await ask('people.enter', { who, pin: '0815' })).toMatchObject({
      ok: false,
      problem: { code: 'pin-wrong' },
    })
    expect((await start('Ana Ruiz')).ok).toBe(false)
    await get('people.enter', { who, pin: '4711' })
    expect((await start('Ana Ruiz')).ok).toBe(true)
    await get('people.leave', { person: who.person })
    expect((await start('Ana Ruiz')).ok).toBe(false)
  })

  it('cannot be tried out: after five wrong ones even the right one waits', async () => {
    const { ask, idOf } = await shop({ ...ana, pin: '4711' })
    const enter = (pin: string) => ask('people.enter', { who: { person: idOf('Ana Ruiz') }, pin })
    for (let tries = 0; tries < 5; tries += 1) await enter('0000')
    expect(await enter('4711')).toMatchObject({ ok: false, problem: { code: 'pin-wait' } })
    for (let seconds = 0; seconds < 31; seconds += 1) await enter('4711') // that of the program goes on by a second at each look
    expect((await enter('4711')).ok).toBe(true)
  })

  it('is asked for where none is sent, which is no try', async () => {
    const { ask } = await shop({ ...ana, badge: 'A-1', pin: '4711' })
    const present = (pin: string | null) => ask('people.enter', { who: { badge: 'A-1' }, pin })
    for (let times = 0; times < 9; times += 1)
      expect(await present(null)).toMatchObject({
        problem: { code: 'pin-wanted', facts: { name: 'Ana Ruiz' } },
      })
    expect((await present('4711')).ok).toBe(true)
  })

  it('is not in the file as it was typed', async () => {
    const { record } = await shop({ ...ana, pin: '4711' })
    expect(record.people()[0]?.pin).toMatch(/^[0-9a-f]{32}:[0-9a-f]{64}$/)
  })

  it('of a mechanic guards the list', async () => {
    const { ask, get, idOf } = await shop({ ...ana, pin: '4711' })
    expect(await ask('people.keep', bo)).toMatchObject({ ok: false, problem: { code: 'people-guarded' } })
    const by = { person: idOf('Ana Ruiz'), pin: '4711' }
    expect(await get('people.keep', { ...bo, by })).toHaveLength(2)
    expect(await ask('people.remove', { person: by.person, by: null })).toMatchObject({ ok: false })
    expect(await get('people.remove', { person: by.person, by })).toHaveLength(1)
  })
})

describe('a name that cannot be told from one with a PIN', () => {
  it.each(['ana ruiz', 'Ana\u00A0Ruiz', '\u0410na Ruiz', 'Ana\u200B Ruiz', 'ＡＮＡ ＲＵＩＺ', 'Ana Rulz'])(
    'is no way past it: %j',
    async (name) => {
      const { start } = await shop({ ...ana, pin: '4711' })
      expect(await start(name)).toMatchObject({ ok: false, problem: { code: 'person-not-proven' } })
    },
  )

  it('is not put in the list beside it', async () => {
    const { ask } = await shop(ana)
    expect(await ask('people.keep', { ...bo, name: 'АNA RUIZ' })).toMatchObject({
      ok: false,
      problem: { code: 'person-twice' },
    })
  })

  it('is not somebody else who looks at the work', async () => {
    const host = asking(await store(folder()))
    await host.get('people.keep', ana)
    const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'ana ruiz', apprentice: true }
    const { line } = await host.get('builds.start', start)
    const act = (after: number, command: Input<'builds.act'>['command']) =>
      host.ask('builds.act', { build: line.id, after, person: 'ANA RUIZ', command })
    await act(1, { type: 'note-marks', step: 'case-marks', typed: '1 1 1 1' })
    await act(2, { type: 'note-marks', step: 'crank-marks', typed: 'F G G H' })
    await act(3, { type: 'choose-shells', step: 'choose-mains', others: [] })
    expect(await act(4, { type: 'confirm-step', step: 'choose-mains', second: 'Ana Ruiz' })).toMatchObject({
      ok: false,
      problem: { code: 'second-is-first' },
    })
  })
})

describe('the list of people', () => {
  it('takes twenty changes at once, one after the other', async () => {
    const { ask, get, bugs } = await shop()
    const answers = await Promise.all(
      Array.from({ length: 20 }, () => ask('people.keep', { ...ana, pin: '4711', badge: 'A-1' })),
    )
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
    for (const answer of answers)
      if (!answer.ok) expect(['person-twice', 'people-guarded']).toContain(answer.problem.code)
    expect(await get('people.list', {})).toHaveLength(1)
    expect(bugs).toEqual([])
  })
})

describe('an apprentice', () => {
  /** Bo has chosen the main shells of an engine; somebody is to look at them. */
  async function apprenticeship() {
    const host = asking(await store(folder()))
    await host.get('people.keep', ana)
    await host.get('people.keep', bo)
    await host.get('people.keep', { ...bo, name: 'Cy Vik' })
    const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Bo Lind' }
    const { line, events } = await host.get('builds.start', start)
    const act = (after: number, command: Input<'builds.act'>['command'], person = 'Bo Lind') =>
      host.ask('builds.act', { build: line.id, after, person, command })
    await act(1, { type: 'note-marks', step: 'case-marks', typed: '1 1 1 1' })
    await act(2, { type: 'note-marks', step: 'crank-marks', typed: 'F G G H' })
    const choose = (after: number, person: string) =>
      act(after, { type: 'choose-shells', step: 'choose-mains', others: [] }, person)
    expect((await choose(3, 'Bo Lind')).ok).toBe(true)
    const confirm = (second: string, after = 4) =>
      act(after, { type: 'confirm-step', step: 'choose-mains', second })
    const sendBack = (second: string) =>
      act(4, { type: 'send-back-step', step: 'choose-mains', second, reason: 'M2 is misread' })
    return { ...host, events, confirm, sendBack, choose }
  }

  it('has builds that say so, who starts them and who is asked for', async () => {
    const { events, get } = await apprenticeship()
    expect(events[0]?.event).toMatchObject({ type: 'build-started', apprentice: true })
    const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
    const [host] = (await get('builds.start', { ...start, apprentice: true })).events
    expect(host?.event).toMatchObject({ apprentice: true })
    const [own] = (await get('builds.start', start)).events
    expect(own?.event).not.toHaveProperty('apprentice')
  })

  it.each([
    ['the apprentice', 'Bo Lind', 'second-is-first'],
    ['another apprentice', 'Cy Vik', 'second-not-known'],
    ['somebody who is not in the list', 'Zed', 'second-not-known'],
  ])('is not looked after by %s', async (_, second, code) => {
    const { confirm, sendBack } = await apprenticeship()
    expect(await confirm(second)).toMatchObject({ ok: false, problem: { code } })
    expect(await sendBack(second)).toMatchObject({ ok: false, problem: { code } })
  })

  it('is not looked after by a mechanic who did it', async () => {
    const { choose, confirm } = await apprenticeship()
    await choose(4, 'Ana Ruiz')
    expect(await confirm('Ana Ruiz', 5)).toMatchObject({
      problem: {
        code: 'second-is-first',
        facts: { name: 'Ana Ruiz' },
      },
    })
  })

  it('is looked after by a mechanic with a PIN once it was given', async () => {
    const { get, confirm } = await apprenticeship()
    const id = (await get('people.list', {})).find(({ name }) => name === 'Ana Ruiz')?.id ?? ''
    await get('people.keep', { ...ana, id, pin: '4711' })
    expect(await confirm('Ana Ruiz')).toMatchObject({ problem: { code: 'person-not-proven' } })
    await get('people.enter', { who: { person: id }, pin: '4711' })
    expect((await confirm('Ana Ruiz')).ok).toBe(true)
  })

  it('is looked after by a mechanic', async () => {
    const { confirm } = await apprenticeship()
    expect(await confirm('Ana Ruiz')).toMatchObject({
      ok: true,
      value: { events: [{ event: { type: 'step-confirmed', second: 'Ana Ruiz' } }] },
    })
  })
})
