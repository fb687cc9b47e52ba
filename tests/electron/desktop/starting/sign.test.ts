import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { problem } from '../../../../core/problem/index.ts'
import { leaveSign } from '../../../../electron/desktop/starting/sign.ts'
import { folder } from '../../bench.ts'

describe('the sign for the program that started the desktop host', () => {
  it('says that the window was shown, or why none will be', () => {
    const file = join(folder(), 'sign')
    leaveSign(file, { kind: 'shown' })
    expect(readFileSync(file, 'utf8')).toBe('shown')
    leaveSign(file, { kind: 'refused', why: problem('record-in-use', { folder: '/data' }) })
    expect(readFileSync(file, 'utf8')).toBe(
      'refused: {"code":"record-in-use","facts":{"folder":"/data"},"path":""}',
    )
    expect(readdirSync(join(file, '..'))).toEqual(['sign'])
  })

  it('is left for nobody where nobody waits, and stops nothing where it cannot be left', () => {
    leaveSign(undefined, { kind: 'shown' })
    const missingFolder = join(folder(), 'gone')
    leaveSign(join(missingFolder, 'sign'), { kind: 'shown' })
    expect(readdirSync(join(missingFolder, '..'))).toEqual([])
  })
})
