import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { contract, problemMessage, type RequestName } from '../../../core/contract/index.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'
import { checkAsyncProperty } from '../../property.ts'

const names = Object.keys(contract) as RequestName[]

/** Whatever a broken or hostile window could send: JSON, and what JSON cannot say. */
const anything = fc.oneof(
  fc.jsonValue({ maxDepth: 4 }),
  fc.anything({ withNullPrototype: true, withBigInt: true, withSparseArray: true, withMap: true }),
)

/** A good request of acting on a build, to be spoilt in one place. */
const good = {
  build: '01956f6c-8a00-7000-8000-000000000001',
  after: 1,
  person: 'Ana Ruiz',
  command: { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' },
}

/** Every place in `good`, as a path. */
const places = [
  ['build'],
  ['after'],
  ['person'],
  ['command'],
  ['command', 'type'],
  ['command', 'step'],
  ['command', 'typed'],
]

function spoilt(path: readonly string[], value: unknown): unknown {
  const [name = '', ...rest] = path
  const change = (
    inside: Record<string, unknown>,
    key: string,
    keys: readonly string[],
  ): Record<string, unknown> => ({
    ...inside,
    [key]:
      keys.length === 0
        ? value
        : change(inside[key] as Record<string, unknown>, keys[0] ?? '', keys.slice(1)),
  })
  return change(good, name, rest)
}

describe('an answer to whatever is asked', () => {
  it('is always an answer: a value, or a problem with a sentence; never a mistake of the program', async () => {
    const { answer, bugs } = asking(await store(folder()))
    await checkAsyncProperty(
      fc.asyncProperty(fc.constantFrom(...names), anything, async (name, input) => {
        const reply = await answer(name, input)
        if (reply.ok) expect(contract[name].output.safeParse(reply.value).success).toBe(true)
        else expect(problemMessage.safeParse(reply.problem).success).toBe(true)
        expect(bugs).toEqual([])
      }),
      { numRuns: 400 },
    )
  })

  it('to a good request spoilt in one place adds nothing to the build', async () => {
    const record = await store(folder())
    const { answer, begin, bugs } = asking(record)
    const { line } = await begin()
    expect(line.id).toBe(good.build)
    await checkAsyncProperty(
      fc.asyncProperty(fc.constantFrom(...places), anything, async (path, value) => {
        await answer('builds.act', spoilt(path, value))
        expect(bugs).toEqual([])
        for (const { body } of record.entries(line.id).slice(1)) expect(body).toContain('"marks-noted"')
      }),
      { numRuns: 400 },
    )
  })

  it.each([
    ['nothing', undefined, ''],
    ['a list', [], ''],
    ['a number that is none', { ...good, after: NaN }, 'after'],
    ['a number below zero', { ...good, after: -1 }, 'after'],
    ['half a number', { ...good, after: 1.5 }, 'after'],
    ['a number that is too large', { ...good, after: 1e300 }, 'after'],
    ['an id that is none', { ...good, build: "1' OR '1'='1" }, 'build'],
    ['one name too many', { ...good, extra: 1 }, ''],
    ['an unknown command', { ...good, command: { type: 'forget' } }, 'command.type'],
    ['a command with one name too many', { ...good, command: { ...good.command, force: true } }, 'command'],
    ['a name from the prototype', JSON.parse(JSON.stringify(good).replace('{', '{"__proto__":{"x":1},')), ''],
    ['half a character', { ...good, command: { ...good.command, typed: '2 \ud83d' } }, 'command.typed'],
    ['a text of a hundred pages', { ...good, person: 'a'.repeat(300_000) }, 'person'],
    ['a text of a thousand pages', { ...good, person: 'a'.repeat(3_000_000) }, ''],
    ['a million values', { ...good, command: { ...good.command, typed: Array(1_000_000).fill(0) } }, ''],
  ])('refuses %s, and says where', async (_, input, path) => {
    const record = await store(folder())
    const { answer, begin } = asking(record)
    const { line } = await begin()
    const reply = await answer('builds.act', input)
    expect(reply).toMatchObject({ ok: false, problem: { path } })
    expect(reply.ok ? '' : sentenceOf(reply.problem).length).toBeGreaterThan(20)
    expect(record.entries(line.id)).toHaveLength(1)
  })

  it('refuses what is nested ten thousand deep', async () => {
    const { answer } = asking(await store(folder()))
    const deep: unknown = JSON.parse('['.repeat(10_000) + ']'.repeat(10_000))
    expect(await answer('builds.act', { ...good, command: deep })).toMatchObject({ ok: false })
    expect(await answer('builds.act', deep)).toMatchObject({ ok: false })
  })

  it.each(['builds.forget', 'toString', '__proto__', 'constructor', '', 'host.read '])(
    'knows no request “%s”',
    async (name) => {
      const { answer } = asking(await store(folder()))
      expect(await answer(name, {})).toMatchObject({ ok: false, problem: { code: 'request-unknown' } })
    },
  )

  it('to a mistake of the program is a plain sentence, and the report holds nothing that was typed', async () => {
    const record = await store(folder())
    const broken = {
      ...record,
      keepPreferences: (change: object) => {
        throw new TypeError(`cannot keep ${JSON.stringify(change)}`)
      },
    }
    const { answer, bugs } = asking(broken)
    const reply = await answer('preferences.keep', { person: 'Ana Ruiz' })
    expect(reply).toMatchObject({ ok: false, problem: { code: 'program-fault' } })
    expect(bugs).toHaveLength(1)
    expect(bugs[0]).toContain('preferences.keep: TypeError')
    expect(bugs[0]).not.toContain('Ana')
  })
})

describe('a request that brings too much', () => {
  const looked = { name: 'a'.repeat(16), base64: null }

  it.each([
    ['a text of more than a million signs', 'builds.find', { words: 'a'.repeat(1_100_000) }],
    ['keys of more than a million signs', 'builds.find', { ['a'.repeat(1_100_000)]: 1 }],
    ['more than a hundred thousand values', 'wrenches.keep', { wrench: Array(200_000).fill(0) }],
    ['bytes', 'verification.compare', { ...looked, base64: new Uint8Array(200 * 1024 * 1024) }],
    ['a list said to be long, with nothing in it', 'wrenches.keep', { wrench: Array(4_000_000_000) }],
  ])('is refused before it is read: %s', async (_, name, input) => {
    const { answer, bugs } = asking(await store(folder()))
    expect(await answer(name, input)).toMatchObject({ ok: false, problem: { code: 'request-too-large' } })
    expect(bugs).toEqual([])
  })
})
