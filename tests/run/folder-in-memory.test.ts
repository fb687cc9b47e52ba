import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'

it('a folder in memory is there while its process goes on, and gone when it ends or is ended', ({ skip }) => {
  const module = JSON.stringify(join(import.meta.dirname, 'folder-in-memory.ts'))
  for (const end of ['', 'process.kill(process.pid, "SIGTERM"); setInterval(() => {}, 1000)']) {
    const program = `
      import { existsSync } from 'node:fs'
      import { folderInMemory } from ${module}
      const folder = folderInMemory()
      console.log(folder, folder !== null && existsSync(folder))
      ${end}`
    const words = ['--input-type=module', '--eval', program]
    const [folder, wasThere] = spawnSync(process.execPath, words, { encoding: 'utf8' })
      .stdout.trim()
      .split(' ')
    skip(folder === 'null', 'this machine has no such place')
    expect(wasThere).toBe('true')
    expect(folder).toMatch(/^\/dev\/shm\//)
    expect(existsSync(folder!)).toBe(false)
  }
})
