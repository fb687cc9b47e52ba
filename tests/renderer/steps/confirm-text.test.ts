import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSpec, type PassKind } from '../../../core/engine/index.ts'
import { windowOf } from '../../../core/tightening/index.ts'
import { en } from '../../../core/words/index.ts'
import { confirmText } from '../../../renderer/steps/run/confirm-text.ts'
import { engineFile } from '../../engine-files.ts'

const read = readSpec(readFileSync(engineFile('skerry-3'), 'utf8'))
if (!read.ok) throw new Error('skerry-3 cannot be read')
const { procedures, fasteners } = read.spec

/** What the main button says in the first pass of a kind, at its first fastener, once this was typed. */
function says(kind: PassKind, typed = ''): string {
  const procedure = procedures.find(({ passes }) => passes.some((pass) => pass.kind === kind))!
  const index = procedure.passes.findIndex((pass) => pass.kind === kind)
  const pass = procedure.passes[index]!
  const fastener = fasteners.find(({ id }) => id === procedure.orders[0]!.sequence[0])!
  const next = { pass: index, fastener: fastener.id }
  const window = windowOf(pass, fastener.id)
  const task = { kind: 'pull', next, pass, fastener, group: null, window, short: null } as const
  return confirmText(task, { torque: 'N·m', length: 'mm' }, typed, en)
}

describe('the main button', () => {
  it('says what is true of the fastener once it is pressed', () => {
    expect(says('seat')).toMatch(/^\S+ is seated$/)
    expect(says('torque')).toMatch(/^\S+ is at \d+ N·m$/)
    expect(says('angle')).toMatch(/^\S+ is turned \d+°$/)
  })

  it('says what was read, with the unit of the bench where none was typed', () => {
    expect(says('torque', ' 23.5 ')).toMatch(/^\S+ reads 23\.5 N·m$/)
    expect(says('angle', '62')).toMatch(/^\S+ reads 62\s?°$/)
  })
})
