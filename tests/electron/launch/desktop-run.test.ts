import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { runDesktop } from '../../../electron/launch/desktop-run.ts'

const folder = mkdtempSync(join(tmpdir(), 'desktop-'))
afterAll(() => rmSync(folder, { recursive: true }))

function program(script: string): string {
  const file = join(folder, 'program')
  writeFileSync(file, `#!/bin/sh\n${script}\n`, { mode: 0o755 })
  return file
}

describe.skipIf(process.platform === 'win32')('the desktop host', () => {
  it('is started on the folder of the project and told the data folder', async () => {
    const heard = join(folder, 'heard')
    await runDesktop(program(`echo "$*" > ${heard}`), '/app', '/data')
    expect(readFileSync(heard, 'utf8')).toBe('/app --data /data\n')
  })

  it('came up when it ends well', async () => {
    expect(await runDesktop(program('exit 0'), '/app', '/data')).toBe(0)
  })

  it('never came up when it fails at once, or cannot be run at all', async () => {
    expect(await runDesktop(program('exit 127'), '/app', '/data')).toBeUndefined()
    expect(await runDesktop(join(folder, 'none'), '/app', '/data')).toBeUndefined()
  })
})
