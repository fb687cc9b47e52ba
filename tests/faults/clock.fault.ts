import { randomUUID } from 'node:crypto'
import { sentenceOf } from '../../core/problem/index.ts'
import { evolve, replay } from '../../core/builds/index.ts'
import type { Answer, Output } from '../../core/contract/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { backupFolder, backupsIn, openStore } from '../../electron/store/index.ts'
import { answersOn } from '../electron/answers.ts'
import { nextCommand } from '../electron/mechanic.ts'
import { chance } from './chance.ts'
import { found, type Fault } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'

const hour = 3_600_000

/** Clocks as machines have them: one that is set back now and then, one that stands still, one on the night of winter time. */
const clocks: Readonly<Record<string, (random: () => number) => () => Date>> = {
  'set back': (random) => {
    let at = Date.parse('2026-03-02T07:30:00Z')
    return () => new Date((at += random() < 0.2 ? -26 * hour * random() : 1000))
  },
  'jumping by years': (random) => {
    let at = Date.parse('2026-03-02T07:30:00Z')
    const [least, most] = [Date.parse('2000-01-01T00:00:00Z'), Date.parse('2090-01-01T00:00:00Z')]
    return () => {
      at += random() < 0.15 ? (random() - 0.5) * 40 * 366 * 24 * hour : 1000
      return new Date((at = Math.min(most, Math.max(least, at))))
    }
  },
  'standing still': () => () => new Date('2026-03-02T07:30:00Z'),
  'an hour twice': () => {
    let readings = 0
    const start = Date.parse('2026-10-25T00:30:00Z')
    return () => new Date(start + ((readings += 1) % 40) * 120_000 - Math.floor(readings / 40) * hour)
  },
}

export const faults: readonly Fault[] = [
  {
    name: 'clock',
    must: 'entries stay in the order of their numbers, whatever the clock said',
    async run(seed) {
      const wrong: string[] = []
      let entries = 0
      for (const [name, make] of Object.entries(clocks))
        await withFolder(async (folder) => {
          const events = await workedOn(folder, make(chance(seed)))
          entries += events.length
          const seqs = events.map(({ seq }) => seq)
          if (seqs.some((seq, at) => seq !== at + 1)) wrong.push(`${name}: the order is ${seqs.join(' ')}`)
          const kept = await lacksOf(folder, new Map())
          wrong.push(...kept.lacks.map((lack) => `${name}: ${lack}`))
        })
      return found({ clocks: Object.keys(clocks).length, entries }, wrong)
    },
  },
  {
    name: 'backups under a jumping clock',
    must: 'a day that the clock says is new gets one backup, the newest twelve are kept, and numbers only grow',
    run: (seed) =>
      withFolder(async (folder) => {
        const now = clocks['jumping by years']!(chance(seed + 41))
        let at = now()
        const opened = await openStore(folder, () => at)
        if (!opened.ok) throw new Error('no record')
        const { answer, stop } = answersOn(opened.value, { now: () => at, newId: randomUUID })
        await answer('builds.start', { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' })
        const wrong: string[] = []
        const numbers = (): number[] => backupsIn(backupFolder(folder)).map(({ sequence }) => sequence)
        let [looks, made, newest] = [0, 0, 0]
        let lastDay = ''
        for (; looks < 150; looks += 1) {
          at = now()
          const day = at.toISOString().slice(0, 10)
          for (let ask = 0; ask < 3; ask += 1) await answer('host.read', {})
          while (((await answer('backups.list', {})) as Answer<'backups.list'> & { ok: true }).value.running)
            await new Promise((resolve) => setTimeout(resolve, 2))
          const top = Math.max(0, ...numbers())
          if (top > newest + 1) wrong.push(`${top - newest} backups for the ${day}`)
          if (top === newest && day !== lastDay) wrong.push(`no backup for the ${day}`)
          made += top - newest
          ;[newest, lastDay] = [top, day]
        }
        const kept = numbers()
        for (let number = newest; number > Math.max(0, newest - 12); number -= 1)
          if (!kept.includes(number)) wrong.push(`backup ${number} of ${newest} is gone`)
        await stop()
        opened.value.close()
        return found(
          { looks, made, kept: kept.length },
          made < 5 ? [...wrong, 'the clock hardly jumped'] : wrong,
        )
      }),
  },
]

/** A hundred steps of a build under a clock; gives it as it opens afterwards. */
async function workedOn(folder: string, now: () => Date): Promise<Output<'builds.open'>['events']> {
  const opened = await openStore(folder, now)
  if (!opened.ok) throw new Error('no record')
  const { answer } = answersOn(opened.value, { now, newId: randomUUID })
  const get = async (name: string, input: unknown): Promise<unknown> => {
    const reply = await answer(name, input)
    if (!reply.ok) throw new Error(sentenceOf(reply.problem))
    return reply.value
  }
  try {
    const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
    const begun = (await get('builds.start', start)) as Output<'builds.start'>
    const read = readSpec(begun.specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    let state = replay(begun.events)
    for (let done = 0; done < 100; done += 1) {
      const command = nextCommand(read.spec, state)
      const input = { build: begun.line.id, after: state.seq, person: 'Ana Ruiz', command }
      const { events } = (await get('builds.act', input)) as Output<'builds.act'>
      state = events.reduce(evolve, state)
    }
    const { events } = (await get('builds.open', { build: begun.line.id })) as Output<'builds.open'>
    return events
  } finally {
    opened.value.close()
  }
}
