import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { documentIn, documentOf, replayDraft } from '../../../core/drafts/index.ts'
import { firstBroken } from '../../../electron/store/index.ts'
import { runs } from '../../runs.ts'
import { buildId, folder, store } from '../bench.ts'
import { asking } from '../requests/asking.ts'

const appender = join(import.meta.dirname, 'appender.ts')

interface Appending {
  readonly child: ChildProcess
  /** Grows as it prints. */
  readonly lines: readonly string[]
  readonly ended: Promise<unknown>
}

function appending(inFolder: string, program = appender): Appending {
  const child = spawn(process.execPath, [program, inFolder], { stdio: ['ignore', 'pipe', 'inherit'] })
  onTestFinished(() => void child.kill('SIGKILL'))
  const lines: string[] = []
  let rest = ''
  child.stdout.on('data', (part: Buffer) => {
    const whole = (rest + part.toString()).split('\n')
    rest = whole.pop() ?? ''
    lines.push(...whole)
  })
  return { child, lines, ended: once(child, 'close') }
}

/** Until it has printed more than `count` lines; one that ends before says so. */
async function printed({ child, lines, ended }: Appending, count: number): Promise<void> {
  let isEnded = false
  const end = ended.then(() => (isEnded = true))
  while (lines.length <= count) {
    if (isEnded) throw new Error(`the appender ended after “${lines.at(-1) ?? 'nothing'}”`)
    await Promise.race([end, new Promise((resolve) => child.stdout!.once('data', resolve))])
  }
}

/** Four of them have more than a hundred entries between them. */
const rounds = runs(4, 6)

describe('a host killed while it adds entries', () => {
  it('has every entry on disk that it had confirmed, and the next one opens at once', async () => {
    const inFolder = folder()
    let confirmed = 0
    for (let round = 0; round < rounds; round += 1) {
      const host = appending(inFolder)
      const { child, lines, ended } = host
      await printed(host, 5 + 17 * round)
      child.kill('SIGKILL')
      await ended
      confirmed = Number(lines.at(-1))
      const record = await store(inFolder)
      const entries = record.entries(buildId)
      expect(entries.length).toBeGreaterThanOrEqual(confirmed)
      expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, at) => at + 1))
      expect(firstBroken(buildId, entries)).toBeNull()
      expect(record.build(buildId)).toMatchObject({
        entries: entries.length,
        head_sha256: entries.at(-1)?.sha256,
      })
      record.close()
    }
    expect(confirmed).toBeGreaterThan(100)
  }, 60_000)
})

describe('a host killed while a draft is edited', () => {
  it('has every edit on disk that a window had shown, the draft as it was then, and the outline that was begun', async () => {
    const inFolder = folder()
    const host = appending(inFolder, join(import.meta.dirname, 'draft-editor.ts'))
    await printed(host, 12)
    host.child.kill('SIGKILL')
    await host.ended
    const shown = Number(host.lines.at(-1))
    const record = await store(inFolder)
    const { get } = asking(record, { engines: [] })
    const [line] = await get('drafts.list', {})
    const { base, entries } = await get('drafts.open', { draft: line!.id })
    expect(entries.length).toBeGreaterThanOrEqual(shown)
    expect(documentOf(replayDraft(documentIn(base), entries)).summary).toBe(`Edit ${entries.length}`)
    const { sketch } = await get('preferences.read', {})
    expect(sketch).toMatchObject({ draft: line!.id, sketch: { face: 'joint', drawn: { kind: 'outline' } } })
    expect(sketch!.sketch.points[0]!.x).toBeGreaterThanOrEqual(shown)
    record.close()
  }, 60_000)
})

describe('a second host on the same data folder', () => {
  // Two runs of hundreds waited here for ever, on a full machine, and why was never seen: so it is tried again, and a hang
  // that is more than a rare one still fails.
  it('is refused by name of the folder while the first goes on', { timeout: 30_000, retry: 2 }, async () => {
    const inFolder = folder()
    const first = appending(inFolder)
    await printed(first, 3)
    const second = appending(inFolder)
    await second.ended
    expect(second.lines).toEqual([
      `Another Bedplate is already running on the data folder ${inFolder}. Go to its window, or end it first.`,
    ])
    await printed(first, first.lines.length + 3)
    first.child.kill('SIGKILL')
    await first.ended
  })

  it('leaves one record when both start in an empty folder', async () => {
    const inFolder = folder()
    const both = [appending(inFolder), appending(inFolder)]
    await Promise.all(both.map((host) => printed(host, 0)))
    expect(both.map(({ lines }) => lines[0]).filter((line) => line === 'open')).toHaveLength(1)
  }, 60_000)
})
