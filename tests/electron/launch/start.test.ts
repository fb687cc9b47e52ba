import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { launcherWords } from '../../../electron/launch/words/index.mjs'

const start = join(import.meta.dirname, '../../../electron/launch/start.mjs')

function runWith(...words: readonly string[]) {
  return runIn('en_GB.UTF-8', ...words)
}

/** On a terminal that is set to a language. */
function runIn(terminal: string, ...words: readonly string[]) {
  const env = { ...process.env, LC_ALL: terminal }
  return spawnSync(process.execPath, [start, ...words], { encoding: 'utf8', env })
}

describe('npm start', () => {
  it('explains its options and starts nothing', () => {
    const { status, stdout, stderr } = runWith('--help')
    expect(status).toBe(0)
    expect(stdout).toContain('--data DIR')
    expect(stderr).toBe('')
  })

  it('ends with 2 and a sentence when an option is unknown', () => {
    const { status, stdout, stderr } = runWith('--loud')
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr).toContain('“--loud” is not an option of Bedplate.')
  })
  it('speaks the language it is asked for, else that of the terminal', () => {
    expect(runIn('es_ES.UTF-8', '--help').stdout).toBe(`${launcherWords.es.usage}\n`)
    expect(runIn('es_ES.UTF-8', '--language=de', '--loud').stderr).toContain('„--loud“ ist keine Option')
    expect(runIn('de_DE.UTF-8', '--language', 'xx').stderr).toContain('„xx“ spricht Bedplate nicht')
  })
})
