import { done, refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { audit } from '../../audit/index.ts'
import type { BuildEvent } from '../events/events.ts'
import { isReadableName } from '../../person/index.ts'

/** What is asked for when a build is begun. Texts come as typed. */
export interface NewBuild {
  readonly name: string
  readonly serial: string
  readonly person: string
  /** An apprentice builds it; false when absent. */
  readonly apprentice?: boolean
  /** SHA-256 of the spec's text, in hexadecimal. */
  readonly specSha256: string
}

/** The longest name of a build, serial number and person's name. */
const longestName = 80

/**
 * The first event of a build. Refuses `engine-faulty` where `audit` finds a fault in the spec,
 * `build-name-missing`, `person-missing`, `text-too-long`, `name-unreadable`.
 */
export function startBuild(spec: EngineSpec, newBuild: NewBuild): Outcome<BuildEvent> {
  if (hasFault(spec)) return refused('engine-faulty', { engine: spec.name })
  const person = readPerson(newBuild.person)
  if (!person.ok) return person
  const name = newBuild.name.trim()
  if (name === '') return refused('build-name-missing', {}, 'name')
  if (name.length > longestName) return refused('text-too-long', { what: 'name', most: longestName }, 'name')
  if (!isReadableName(name)) return refused('name-unreadable', { what: 'name' }, 'name')
  const serial = newBuild.serial.trim()
  if (serial.length > longestName)
    return refused('text-too-long', { what: 'serial', most: longestName }, 'serial')
  if (serial !== '' && !isReadableName(serial))
    return refused('name-unreadable', { what: 'serial' }, 'serial')
  const { id, revision } = spec
  const { specSha256 } = newBuild
  return done({
    type: 'build-started',
    version: 1,
    spec: id,
    specRevision: revision,
    specSha256,
    name,
    serial,
    ...(newBuild.apprentice === true && { apprentice: true as const }),
  })
}

/** A spec never changes, and to audit one takes as long as a thousand decisions. */
const faulty = new WeakMap<EngineSpec, boolean>()

/** Whether nothing may be built by the spec. */
export function hasFault(spec: EngineSpec): boolean {
  const found = faulty.get(spec) ?? audit(spec).some(({ weight }) => weight === 'fault')
  faulty.set(spec, found)
  return found
}

/** The name of who acts, which stands beside every entry. Refuses `person-missing`, `text-too-long`, `name-unreadable`. */
export function readPerson(typed: string): Outcome<string> {
  const person = typed.trim()
  if (person === '') return refused('person-missing', {}, 'person')
  if (person.length > longestName)
    return refused('text-too-long', { what: 'person', most: longestName }, 'person')
  return isReadableName(person) ? done(person) : refused('name-unreadable', { what: 'person' }, 'person')
}
