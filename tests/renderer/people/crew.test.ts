import { describe, expect, it } from 'vitest'
import type { PersonLine } from '../../../core/contract/index.ts'
import { done, refused } from '../../../core/problem/index.ts'
import { Crew } from '../../../renderer/people/crew.svelte.ts'
import { twin } from '../twin.ts'

const person = (place: number, name: string, change: Partial<PersonLine> = {}): PersonLine => ({
  id: `01956f6c-8a00-7000-8000-${String(place).padStart(12, '0')}`,
  name,
  role: 'mechanic',
  hasBadge: false,
  hasPin: false,
  present: true,
  ...change,
})
const ana = person(1, 'Ana Ruiz', { hasPin: true, present: false })
const bo = person(2, 'Bo Lind', { role: 'apprentice', hasBadge: true })

/** A bench at which Bo Lind stands, and Ana Ruiz has the PIN 4711. */
async function bench() {
  let name = bo.name
  const list = [ana, bo]
  const host = twin({
    'people.list': () => done(list),
    'people.leave': () => done(list),
    'people.enter': ({ who, pin }) => {
      const found =
        'badge' in who ? (who.badge === 'B-17' ? bo : null) : list.find(({ id }) => id === who.person)
      if (!found) return refused('badge-unknown', {}, 'badge')
      if (found.hasPin && pin === null) return refused('pin-wanted', { name: found.name }, 'pin')
      return done({ ...found, present: true })
    },
  })
  const crew = new Crew(host.client, {
    name: () => name,
    keep: (next) => Promise.resolve((name = next)),
  })
  await crew.load()
  return { ...host, crew }
}

describe('the people of a bench', () => {
  it('are changed only with the PIN of a mechanic who has one', async () => {
    const { crew } = await bench()
    expect(crew.guards.map(({ name }) => name)).toEqual(['Ana Ruiz'])
  })

  it('need not have in their list who stands there', async () => {
    const { crew } = await bench()
    await crew.takeBench('  Cy Vik ')
    expect(crew.name).toBe('Cy Vik')
    expect(crew.find('Cy Vik')).toBeNull()
  })

  it('give what is begun at once the name that is still being kept', async () => {
    const { client } = await bench()
    let name = ''
    let keep = (): void => undefined
    const kept = new Promise<void>((done) => (keep = done))
    const crew = new Crew(client, { name: () => name, keep: (next) => kept.then(() => (name = next)) })
    void crew.named('Cy Vik')
    const begun = crew.keptName()
    expect(crew.name).toBe('')
    keep()
    expect(await begun).toBe('Cy Vik')
  })

  it('are asked for their PIN, and keep the bench as it was until it is right', async () => {
    const { crew } = await bench()
    const answer = await crew.enter({ person: ana.id }, null)
    expect(answer).toMatchObject({ ok: false, problem: { code: 'pin-wanted' } })
    expect(crew.name).toBe('Bo Lind')
    expect(crew.find('Ana Ruiz')?.present).toBe(false)
    expect(await crew.enter({ person: ana.id }, '4711')).toMatchObject({ ok: true })
    expect(crew.find('Ana Ruiz')?.present).toBe(true)
  })

  it('need it again once they have handed the bench over', async () => {
    const { crew, requests } = await bench()
    await crew.takeBench('Ana Ruiz')
    await crew.takeBench('Bo Lind')
    expect(requests.filter(({ name }) => name === 'people.leave')).toEqual([
      { name: 'people.leave', input: { person: ana.id } },
    ])
  })
})

describe('a badge', () => {
  it('goes to the one who asked for it last, a number too', async () => {
    const { crew } = await bench()
    const remarks: string[] = []
    const stopFirst = crew.listen((badge) => remarks.push(`first ${badge}`))
    const stopSecond = crew.listen((badge) => remarks.push(`second ${badge}`))
    expect(crew.asksForBadge).toBe(true)
    expect(await crew.presented('4711', true)).toBe(true)
    stopSecond()
    await crew.presented('4712', true)
    stopFirst()
    expect(remarks).toEqual(['second 4711', 'first 4712'])
    expect(crew.asksForBadge).toBe(false)
  })

  it('of nobody leaves a field what was typed into it', async () => {
    const { crew } = await bench()
    expect(await crew.presented('left of the pump', true)).toBe(false)
    expect(crew.name).toBe('Bo Lind')
  })
})
