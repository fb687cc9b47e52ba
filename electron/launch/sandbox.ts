import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { Phrase } from '../../core/problem/index.ts'

/** What Linux says about the namespaces that Chromium's sandbox is made of; texts as its files hold them. */
export type SandboxFacts = {
  /** `/proc/sys/kernel/apparmor_restrict_unprivileged_userns`: `1` on Ubuntu 23.10 and later. */
  readonly restricted: string | undefined
  /** `/proc/sys/kernel/unprivileged_userns_clone`, of Debian's kernels. */
  readonly allowed: string | undefined
  /** `/proc/sys/user/max_user_namespaces`. */
  readonly most: string | undefined
  /** Whether Electron's own helper for the sandbox is root's and runs as root. */
  readonly hasHelper: boolean
  /** Whether AppArmor has been given our profile for this program. */
  readonly isKnown: boolean
}

/** Where the profile for Electron in this folder lies once a person has put it there. */
export const profilePlace = '/etc/apparmor.d/bedplate-electron'

/**
 * Why Electron would end at once here, since it cannot make its sandbox; `undefined` where nothing speaks against it. The
 * rules are the kernel's and AppArmor's: Chromium, docs/linux/suid_sandbox_development.md and electron/electron issue 42510.
 */
export function whyNoSandbox(facts: SandboxFacts): 'apparmor' | 'no-namespaces' | undefined {
  if (facts.hasHelper) return undefined
  if (facts.allowed === '0' || facts.most === '0') return 'no-namespaces'
  return facts.restricted === '1' && !facts.isKnown ? 'apparmor' : undefined
}

/** The profile that lets one program make its sandbox, and gives it no other right that it had not before. */
export function profileFor(binary: string): string {
  return `abi <abi/4.0>,
include <tunables/global>

profile bedplate-electron "${binary}" flags=(unconfined) {
  userns,
  include if exists <local/bedplate-electron>
}
`
}

export function sandboxFacts(binary: string): SandboxFacts {
  const helper = statSync(join(dirname(binary), 'chrome-sandbox'), { throwIfNoEntry: false })
  return {
    restricted: readText('/proc/sys/kernel/apparmor_restrict_unprivileged_userns'),
    allowed: readText('/proc/sys/kernel/unprivileged_userns_clone'),
    most: readText('/proc/sys/user/max_user_namespaces'),
    hasHelper: helper !== undefined && helper.uid === 0 && (helper.mode & 0o4755) === 0o4755,
    isKnown: readText(profilePlace) === profileFor(binary).trim(),
  }
}

/** For the person, with what to do; what AppArmor is to be given is written into the folder of what is built. */
export function sandboxRefusal(why: 'apparmor' | 'no-namespaces', root: string, binary: string): Phrase {
  if (why === 'no-namespaces') return { code: 'noNamespaces', facts: {} }
  const profile = join(root, 'dist/bedplate-electron')
  mkdirSync(dirname(profile), { recursive: true })
  writeFileSync(profile, profileFor(binary))
  return { code: 'appArmor', facts: { profile, place: profilePlace } }
}

function readText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8').trim()
  } catch {
    return undefined
  }
}
