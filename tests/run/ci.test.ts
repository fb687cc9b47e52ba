import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { root } from './command.ts'

// Which user runs these tests must not matter, so the commands that only root may give are played by scripts that come
// first in PATH; what `npm` is asked to do, and where, is what the script is about.
let folder: string
let clone: string
let commands: string

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ci-'))
  clone = join(folder, 'a clone')
  commands = join(folder, 'commands')
  for (const made of [clone, commands, join(folder, 'home'), join(clone, 'node_modules')]) mkdirSync(made)
  cpSync(join(root, '.ci'), join(clone, '.ci'), { recursive: true })
  cpSync(join(root, 'tests/run'), join(clone, 'tests/run'), { recursive: true })
  writeFileSync(join(folder, 'home/.npmrc'), 'proxy=http://proxy.invalid:3128\n')
  command('chromium-headless-shell', 'exit 0')
  command('id', 'case "$1" in -u) echo 0;; *) echo 4711;; esac')
  command('chown', `echo "$*" >> ${folder}/chown`)
  command(
    'setpriv',
    `echo "$*" >> ${folder}/setpriv\nwhile case "$1" in --*) ;; *) false;; esac; do shift; done\nexec "$@"`,
  )
  command('npm', npm)
})
afterEach(() => rmSync(folder, { recursive: true }))

/** Notes how it was called, and ends as the tests do. */
const npm = `
{ echo "$*"; pwd; echo "$HOME"; echo "$CI"; echo "$REGISTRY_PROXY"; cat "$HOME/.npmrc"; ls; } > "$NOTE"
mkdir test-results && echo picture > test-results/failed.png
echo '3 passed, 0 failed'
exit "\${ENDS:-0}"`

function command(name: string, script: string): void {
  writeFileSync(join(commands, name), `#!/bin/sh\n${script}\n`, { mode: 0o755 })
}

function ci(words: readonly string[] = [], env: NodeJS.ProcessEnv = {}) {
  const ended = spawnSync('bash', [join(clone, '.ci/run'), ...words], {
    encoding: 'utf8',
    env: {
      PATH: `${commands}:${process.env.PATH}`,
      HOME: join(folder, 'home'),
      NOTE: join(folder, 'note'),
      REGISTRY_PROXY: 'carried over',
      ...env,
    },
  })
  const [asked = '', cwd = '', home = '', isCi, proxy, npmrc, ...files] = readFileSync(
    join(folder, 'note'),
    'utf8',
  )
    .trim()
    .split('\n')
  return { ...ended, asked, cwd, home, isCi, proxy, npmrc, files }
}

const setprivs = () => readFileSync(join(folder, 'setpriv'), 'utf8')

describe.skipIf(process.platform === 'win32')('the run of all tests by root', () => {
  it('is that of an ordinary user, on a copy of the sources that is gone afterwards', () => {
    const { status, asked, cwd, home, isCi, files } = ci()
    expect(status).toBe(0)
    expect(setprivs()).toContain('--reuid=bedplate-tests --regid=4711 --clear-groups npm test')
    expect([asked, isCi]).toEqual(['test --', 'true'])
    expect(files).toEqual(['tests'])
    const place = join(cwd, '..')
    expect(home).toBe(join(place, 'home'))
    expect(readFileSync(join(folder, 'chown'), 'utf8')).toContain(`-R bedplate-tests ${place}`)
    expect(existsSync(place)).toBe(false)
    expect(existsSync(join(clone, 'node_modules'))).toBe(true)
  })

  it('ends with the line of the tests and with their exit code', () => {
    expect(ci().stdout).toBe('3 passed, 0 failed\n')
    expect(ci([], { ENDS: '1' }).status).toBe(1)
  })

  it('keeps the settings of npm and the surroundings that lead to the network', () => {
    const { npmrc, proxy } = ci()
    expect([npmrc, proxy]).toEqual(['proxy=http://proxy.invalid:3128', 'carried over'])
  })

  it('passes its words on', () => {
    expect(ci(['published']).asked).toBe('test -- published')
  })

  it('brings pictures of what failed back, and only those', () => {
    ci()
    expect(existsSync(join(clone, 'test-results'))).toBe(false)
    ci([], { ENDS: '1' })
    expect(readFileSync(join(clone, 'test-results/failed.png'), 'utf8')).toBe('picture\n')
  })

  it('says so where root cannot become anybody else, and runs all the same', () => {
    command('setpriv', 'exit 1')
    const { status, stderr, cwd } = ci()
    expect(stderr).toContain('Root cannot become another user here')
    expect([status, cwd]).toEqual([0, clone])
  })
})

describe.skipIf(process.platform === 'win32')('the run of all tests by anybody else', () => {
  it('is theirs, where they are', () => {
    command('id', 'echo 1000')
    const { status, stdout, cwd, asked } = ci(['e2e'])
    expect([status, stdout]).toEqual([0, '3 passed, 0 failed\n'])
    expect([cwd, asked]).toEqual([clone, 'test -- e2e'])
    expect(existsSync(join(folder, 'setpriv'))).toBe(false)
  })
})
