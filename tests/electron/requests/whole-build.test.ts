import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { evolve, replay } from '../../../core/builds/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { firstBroken } from '../../../electron/store/index.ts'
import { folder, store } from '../bench.ts'
import { nextCommand } from '../mechanic.ts'
import { asking, engines } from './asking.ts'

describe('a whole build, asked for step by step', () => {
  it.each(engines.map(({ id }) => id))(
    'of %s is finished, with every entry on disk and the chain whole',
    async (engine) => {
      const record = await store(folder())
      const { get, act, bugs } = asking(record)
      const opened = await get('builds.start', { engine, name: 'Pump', serial: 'P-7', person: 'Ana Ruiz' })
      const read = readSpec(opened.specText)
      if (!read.ok) throw new Error('the spec cannot be read')
      let state = replay(opened.events)
      for (let command = nextCommand(read.spec, state); command; command = nextCommand(read.spec, state)) {
        const answer = await act(opened.line.id, state.seq, command)
        if (!answer.ok) throw new Error(`${command.type}: ${sentenceOf(answer.problem)}`)
        state = answer.value.events.reduce(evolve, state)
      }
      expect(bugs).toEqual([])
      const again = await get('builds.open', { build: opened.line.id })
      expect(replay(again.events)).toEqual(state)
      expect(again.line).toMatchObject({ finished: true, entries: state.seq })
      expect(firstBroken(opened.line.id, record.entries(opened.line.id))).toBeNull()
    },
  )
})
