import canonicalize from 'canonicalize'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import type { BuildCommand } from '../../../../core/builds/index.ts'
import { readExport } from '../../../../electron/requests/exchange/export-file.ts'
import { folder, store } from '../../bench.ts'
import { finishBuild } from '../../mechanic.ts'
import { asking } from '../asking.ts'
import { forged, sha256 } from './forged.ts'

async function bench() {
  const record = await store(folder())
  return { record, ...asking(record) }
}

type Bench = Awaited<ReturnType<typeof bench>>

const marks: readonly BuildCommand[] = [
  { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' },
  { type: 'note-marks', step: 'crank-marks', typed: 'F G H F' },
  { type: 'note-marks', step: 'rod-marks', typed: '4 5 4' },
]

/** A build with the first of the marks noted, up to `upTo` of them. */
async function marked({ begin, act, get }: Bench, upTo: number) {
  const { line } = await begin()
  await more({ act }, line.id, 0, upTo)
  const { text, fileName } = await get('builds.export', { build: line.id })
  return { build: line.id, text, fileName }
}

async function more({ act }: Pick<Bench, 'act'>, build: string, from: number, upTo: number): Promise<void> {
  for (const [at, command] of marks.slice(from, upTo).entries()) {
    const answer = await act(build, from + at + 1, command)
    if (!answer.ok) throw new Error(sentenceOf(answer.problem))
  }
}

describe('an exported build', () => {
  it('can be checked by anybody from the file alone: nothing of the program is used here', async () => {
    const here = await bench()
    const { line, specText, events } = await here.begin()
    await finishBuild({ build: line.id, specText, events, act: here.act })
    const { text } = await here.get('builds.export', { build: line.id })

    const lines = text.split('\n')
    expect(lines.pop()).toBe('')
    const [head, spec, ...entries] = lines
    const top = JSON.parse(head ?? '')
    let previous: string | null = null
    for (const [at, entry] of entries.entries()) {
      const body = JSON.parse(entry)
      expect(body).toMatchObject({ build: line.id, seq: at + 1, previous })
      previous = sha256(entry)
    }
    expect(top).toEqual({
      bedplateBuild: 1,
      build: line.id,
      entries: entries.length,
      head: previous,
      specSha256: sha256(JSON.parse(spec ?? '').spec),
    })
    expect(JSON.parse(entries[0] ?? '').event.specSha256).toBe(top.specSha256)
    for (const each of lines) expect(canonicalize(JSON.parse(each))).toBe(each)
  })

  it('is the same bytes each time, under a name with its number and head code', async () => {
    const here = await bench()
    const { build, text, fileName } = await marked(here, 2)
    expect((await here.get('builds.export', { build })).text).toBe(text)
    const head = sha256(text.trimEnd().split('\n').at(-1) ?? '').slice(0, 16)
    expect(fileName).toBe(`2026-001 ferry-port-engine 3-${head}.bedplate`)
  })
})

describe('taking in an exported build', () => {
  it('elsewhere gives the same build, under that bench’s own number', async () => {
    const there = await bench()
    const { build, text } = await marked(await bench(), 2)
    const imported = await there.get('builds.import', { text })
    expect(imported).toMatchObject({ kind: 'added', line: { id: build, number: '2026-001', entries: 3 } })
    expect((await there.get('builds.export', { build })).text).toBe(text)
    expect((await there.get('builds.find', { words: 'ferry f201 ana' })).lines.map(({ id }) => id)).toEqual([
      build,
    ])
    expect((await there.act(build, 3, marks[2]!)).ok).toBe(true)
  })

  it('twice does no harm', async () => {
    const there = await bench()
    const { text } = await marked(await bench(), 2)
    await there.get('builds.import', { text })
    expect(await there.get('builds.import', { text })).toMatchObject({ kind: 'known', line: { entries: 3 } })
    expect(await there.get('builds.list', {})).toHaveLength(1)
  })

  it('that was continued elsewhere goes on here', async () => {
    const [here, there] = [await bench(), await bench()]
    const { build, text } = await marked(here, 1)
    await there.get('builds.import', { text })
    await there.get('builds.open', { build })
    await more(here, build, 1, 3)
    const longer = await here.get('builds.export', { build })
    expect(await there.get('builds.import', { text: longer.text })).toMatchObject({
      kind: 'continued',
      added: 2,
    })
    expect((await there.get('builds.open', { build })).events).toHaveLength(4)
    expect((await there.act(build, 4, { type: 'void-build', reason: 'Trial only' })).ok).toBe(true)
  })

  it('that is behind the one here changes nothing, and says by how much', async () => {
    const here = await bench()
    const { build, text } = await marked(here, 1)
    await more(here, build, 1, 3)
    expect(await here.get('builds.import', { text })).toMatchObject({
      kind: 'older',
      behind: 2,
      line: { entries: 4 },
    })
  })

  it('that was continued differently is shown as a fork: both entries, and nothing is changed', async () => {
    const [here, there] = [await bench(), await bench()]
    const { build, text } = await marked(here, 1)
    await there.get('builds.import', { text })
    await there.act(build, 2, { type: 'note-marks', step: 'crank-marks', typed: 'H H H H' })
    await more(here, build, 1, 3)
    const before = (await there.get('builds.export', { build })).text
    const other = (await here.get('builds.export', { build })).text
    expect(await there.get('builds.import', { text: other })).toMatchObject({
      kind: 'fork',
      at: 3,
      here: { seq: 3, event: { typed: 'H H H H' } },
      there: { seq: 3, event: { typed: 'F G H F' } },
      specText: (await here.get('builds.open', { build })).specText,
    })
    expect((await there.get('builds.export', { build })).text).toBe(before)
  })

  it('is not stopped by a demo’s or a finished build’s being one', async () => {
    const here = await bench()
    const { line, specText, events } = await here.begin()
    await finishBuild({ build: line.id, specText, events, act: here.act })
    const { text } = await here.get('builds.export', { build: line.id })
    const there = await bench()
    expect(await there.get('builds.import', { text })).toMatchObject({ line: { finished: true, demo: true } })
  })
})

describe('a file that is not an export as it was made', () => {
  it('is found out wherever a byte was changed, left out or put in', async () => {
    const { text } = await marked(await bench(), 2)
    const bytes = Buffer.from(text, 'utf8')
    const places = Array.from({ length: 300 }, (_, at) => Math.floor((at * bytes.length) / 300))
    for (const at of [...places, bytes.length - 1]) {
      const changed = Buffer.from(bytes)
      changed.writeUInt8(changed.readUInt8(at) ^ 1, at)
      const without = Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1)])
      const with1 = Buffer.concat([bytes.subarray(0, at), Buffer.from('1'), bytes.subarray(at)])
      for (const spoilt of [changed, without, with1])
        expect((await readExport(spoilt.toString('utf8'))).ok, `${at}`).toBe(false)
    }
  })

  it('is imported by the forger of these tests when nothing was changed', async () => {
    const { text } = await marked(await bench(), 2)
    expect(forged(text, () => undefined)).toBe(text)
  })

  const setSpec = (entries: Record<string, unknown>[], spec: string) => {
    ;(entries[0]?.event as Record<string, unknown>).specSha256 = sha256(spec)
    return spec
  }

  it.each<[string, (text: string) => string, string]>([
    ['nothing', () => '', 'import-not-ours'],
    ['a letter', () => 'Dear Sir,\nplease', 'import-not-ours'],
    ['a zip', () => 'PK\u0003\u0004\u0014\u0000\n\n', 'import-not-ours'],
    ['a spec', (text) => String(JSON.parse(text.split('\n')[1] ?? '').spec), 'import-not-ours'],
    ['cut in half', (text) => text.slice(0, text.length / 2), 'import-altered'],
    ['cut after a whole line', (text) => text.split('\n').slice(0, -2).join('\n') + '\n', 'import-altered'],
    ['without its end of line', (text) => text.slice(0, -1), 'import-altered'],
    ['with a byte more', (text) => text + ' ', 'import-altered'],
    ['with an empty line more', (text) => text + '\n', 'import-altered'],
    ['with the line ends of another system', (text) => text.replaceAll('\n', '\r\n'), 'import-altered'],
    ['with a mark in front', (text) => `\u{FEFF}${text}`, 'import-not-ours'],
    ['twice in one', (text) => text + text, 'import-altered'],
    ['of a newer program', (text) => text.replace('"bedplateBuild":1', '"bedplateBuild":9'), 'import-newer'],
    [
      'with its keys in another order',
      (text) => text.replace(/^\{(.*?),(.*)\}\n/, '{$2,$1}\n'),
      'import-altered',
    ],
    [
      'nested ten thousand deep',
      (text) => forgedLine(text, `${'['.repeat(10_000)}${']'.repeat(10_000)}`),
      'import-altered',
    ],
    ['with a key twice', (text) => text.replace('{"at":', '{"at":"x","at":'), 'import-altered'],
    ['of 500 MB', () => ' '.repeat(500 * 1024 * 1024), 'import-too-large'],
    [
      'whose event is none',
      (text) => forged(text, (entries) => void (entries[1]!.event = 'thread cleaned')),
      'import-altered',
    ],
    [
      'with a time that is none',
      (text) => forged(text, (entries) => void (entries[1]!.at = 'yesterday')),
      'import-altered',
    ],
    [
      'with an entry of nobody',
      (text) => forged(text, (entries) => void (entries[1]!.person = '')),
      'import-altered',
    ],
    [
      'that begins twice',
      (text) => forged(text, (entries) => void (entries[1]!.event = entries[0]!.event)),
      'import-senseless',
    ],
    [
      'that does not begin',
      (text) => forged(text, (entries) => void (entries[0]!.event = entries[1]!.event)),
      'import-senseless',
    ],
    [
      'with another spec than its entries name',
      (text) => forged(text, (_, spec) => spec.replace('"demo"', '"demo" ')),
      'import-senseless',
    ],
    [
      'with a spec that is none',
      (text) => forged(text, (entries) => setSpec(entries, '{"bedplateSpec":1}')),
      'import-spec-faulty',
    ],
    [
      'with a spec that fails its audit',
      (text) =>
        forged(text, (entries, spec) => {
          const changed = JSON.parse(spec) as { procedures: { orders: { sequence: string[] }[] }[] }
          changed.procedures[0]?.orders[0]?.sequence.shift()
          return setSpec(entries, JSON.stringify(changed))
        }),
      'import-spec-faulty',
    ],
  ])('is refused: %s', async (_, make, code) => {
    const here = await bench()
    const { text } = await marked(await bench(), 2)
    const answer = await here.ask('builds.import', { text: make(text) })
    expect(answer).toMatchObject({ ok: false, problem: { code } })
    expect(answer.ok ? 0 : sentenceOf(answer.problem).length).toBeGreaterThan(20)
    expect(await here.get('builds.list', {})).toEqual([])
    expect(here.bugs).toEqual([])
  })

  function forgedLine(text: string, line: string): string {
    return text.replace(/\n.*\n$/, `\n${line}\n`)
  }
})
