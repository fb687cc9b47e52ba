import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import { loadWords } from '../../../core/words/index.ts'
import { labelRows, orderRows } from '../../../renderer/tray/tray-rows.ts'
import { choosing as step, marked, readings } from '../../core/builds/main-shells.ts'
import { engineFile } from '../../engine-files.ts'

const de = await loadWords('de')

describe('the undersize of shells', () => {
  it('has its German name on labels and the order list of a German window', () => {
    const german = readSpec(readFileSync(engineFile('skerry-3'), 'utf8'), 'de')
    if (!german.ok) throw new Error('the spec cannot be read')
    const shop = marked()
    shop.does({ type: 'declare-undersize', step, positions: ['M2'], undersize: '0.25 under' })
    shop.does(readings('M2', 'journal', '51.741'))
    const [upper] = labelRows(german.spec, shop.state, '1').filter(({ position }) => position === 'M2')
    expect(upper).toMatchObject({ undersize: 'Untermaß 0,25', grade: { grade: 'T' } })
    const ground = orderRows(de, german.spec, shop.state).filter(({ size }) => size !== null)
    expect(ground.map(({ size, grade, half }) => ({ size, grade, half }))).toEqual([
      { size: 'Untermaß 0,25', grade: 'T', half: 'upper' },
      { size: 'Untermaß 0,25', grade: 'T', half: 'lower' },
    ])
  })
})
