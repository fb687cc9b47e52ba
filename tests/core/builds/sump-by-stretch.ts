import { readFileSync } from 'node:fs'
import { sentenceOf } from '../../../core/problem/index.ts'
import { readSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { engineFile } from '../../engine-files.ts'

/** A demo engine whose sump screws are measured, pulled to 3 N·m, then tightened until they are 0.02 to 0.04 mm longer. */
export function sumpByStretch(): EngineSpec {
  const text = readFileSync(engineFile('skerry-3'), 'utf8')
  const written = JSON.parse(text) as {
    procedures: { id: string; orders: { id: string }[]; passes: object[] }[]
  }
  const sump = written.procedures.find(({ id }) => id === 'sump')!
  const order = sump.orders[0]!.id
  sump.passes = [
    { kind: 'length', order },
    { kind: 'torque', order, target: '3 N·m' },
    {
      ...{ kind: 'tighten-to-stretch', order, least: '0.02 mm', most: '0.04 mm' },
      torque: { least: '5 N·m', most: '12 N·m' },
    },
  ]
  const read = readSpec(JSON.stringify(written))
  if (!read.ok) throw new Error(read.problems.map(sentenceOf).join('\n'))
  return read.spec
}
