import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import {
  profileFor,
  profilePlace,
  sandboxRefusal,
  whyNoSandbox,
  type SandboxFacts,
} from '../../../electron/launch/sandbox.ts'

/** A kernel without AppArmor's rule, as Debian 12 has it. */
const plain: SandboxFacts = {
  restricted: undefined,
  allowed: '1',
  most: '96364',
  hasHelper: false,
  isKnown: false,
}

const root = mkdtempSync(join(tmpdir(), 'a folder with spaces '))
afterAll(() => rmSync(root, { recursive: true }))

describe("the sandbox of Electron's window", () => {
  it('can be made where nothing speaks against it', () => {
    expect(whyNoSandbox(plain)).toBeUndefined()
    expect(whyNoSandbox({ ...plain, restricted: '0', allowed: undefined })).toBeUndefined()
  })

  it('cannot be made on Ubuntu 23.10 and later by a program that AppArmor does not know', () => {
    expect(whyNoSandbox({ ...plain, restricted: '1' })).toBe('apparmor')
    expect(whyNoSandbox({ ...plain, restricted: '1', isKnown: true })).toBeUndefined()
  })

  it('cannot be made where nobody may make namespaces, whatever AppArmor knows', () => {
    expect(whyNoSandbox({ ...plain, most: '0', isKnown: true })).toBe('no-namespaces')
    expect(whyNoSandbox({ ...plain, allowed: '0' })).toBe('no-namespaces')
  })

  it('can be made everywhere by the helper that runs as root', () => {
    expect(whyNoSandbox({ ...plain, restricted: '1', most: '0', hasHelper: true })).toBeUndefined()
  })
})

describe('what is said about AppArmor', () => {
  it('is a command that puts a profile for this very program in its place', () => {
    const binary = join(root, 'node_modules/electron/dist/electron')
    const refusal = textIn(en, en.phrases, sandboxRefusal('apparmor', root, binary))
    const [, from = '', to] =
      /install -m 644 "(.*?)" (\S+) && sudo apparmor_parser --replace \S+/.exec(refusal) ?? []
    expect(to).toBe(profilePlace)
    expect(readFileSync(from, 'utf8')).toBe(profileFor(binary))
    expect(profileFor(binary)).toContain(
      `profile bedplate-electron "${binary}" flags=(unconfined) {\n  userns,`,
    )
  })
})
