import { describe, expect, it } from 'vitest'
import * as nodeVersion from '../../../electron/launch/node-version.mjs'
import { launcherWords } from '../../../electron/launch/words/index.mjs'

const { flagsFor, isAtLeast, nodeToUse } = nodeVersion
const refusalBeforeInstall = (machine: nodeVersion.Machine) =>
  nodeVersion.refusalBeforeInstall(launcherWords.en, machine)

const linux = { platform: 'linux', arch: 'x64', bundled: false }
const mac = { platform: 'darwin', arch: 'arm64', bundled: false }

describe('versions', () => {
  it.each([
    ['22.12.0', '22.12.0', true],
    ['22.11.9', '22.12.0', false],
    ['22.9.0', '22.12.0', false],
    ['23.0.0', '22.12.0', true],
    ['24.0.0-nightly', '22.12.0', true],
  ])('%s is at least %s: %s', (version, least, expected) => {
    expect(isAtLeast(version, least)).toBe(expected)
  })
})

describe('the Node of the machine', () => {
  it('may be 20 on Linux x64, where a newer one comes with the packages', () => {
    expect(refusalBeforeInstall({ ...linux, version: '20.20.2' })).toBeUndefined()
  })

  it('must run TypeScript itself elsewhere', () => {
    expect(refusalBeforeInstall({ ...mac, version: '22.12.0' })).toBeUndefined()
    expect(refusalBeforeInstall({ ...mac, version: '20.20.2' })).toMatch(
      /needs Node 22\.12 .* this is Node 20\.20\.2/,
    )
    expect(refusalBeforeInstall({ ...linux, arch: 'arm64', version: '20.20.2' })).toMatch(/needs Node 22\.12/)
  })

  it('is refused in one line that says what to do', () => {
    const refusal = refusalBeforeInstall({ ...linux, version: '18.19.0' })
    expect(refusal).toMatch(/needs Node 20 .* this is Node 18\.19\.0\. Install a current one/)
    expect(refusal).not.toContain('\n')
  })

  it('does not matter where the one from the packages is already there', () => {
    expect(refusalBeforeInstall({ ...linux, version: '18.19.0', bundled: true })).toBeUndefined()
  })
})

describe('the Node to use', () => {
  it('is the one from the packages, the one all was tried with, before any other', () => {
    expect(nodeToUse({ ...linux, version: '26.1.0', bundled: true })).toBe('bundled')
  })

  it('is else the own one from 22.12 on', () => {
    expect(nodeToUse({ ...mac, version: '22.12.0' })).toBe('own')
    expect(nodeToUse({ ...linux, version: '20.20.2' })).toBe('none')
  })
})

describe('flags', () => {
  // Type stripping came unflagged with 22.18 and 23.6, without a warning with 22.18 and 24.3: Node's documentation of it.
  it.each(['22.18.0', '24.3.0', '24.21.0', '26.0.0'])('are none for %s', (version) => {
    expect(flagsFor(version)).toEqual([])
  })

  it.each(['22.12.0', '22.17.1', '23.5.0', '24.2.0'])(
    'switch type stripping on, silently, for %s',
    (version) => {
      expect(flagsFor(version)).toEqual([
        '--experimental-strip-types',
        '--disable-warning=ExperimentalWarning',
      ])
    },
  )
})
