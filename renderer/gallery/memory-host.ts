import {
  firstPreferences,
  type EngineLine,
  type LibraryLine,
  type PersonLine,
  type Preferences,
  type WrittenWrench,
} from '../../core/contract/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import { audit } from '../../core/audit/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import type { Language } from '../../core/words/index.ts'
import { engines, specIn, type Engine } from './engines.ts'
import { MemoryBuild } from '../bench/memory-build.ts'
import { type MemoryHandlers } from './memory-client.ts'
import { addPhotoOf, samplePhotos } from './sample-photos.ts'
import { memoryPractice, type SamplePractice } from './memory-practice.ts'

/** What a host in memory holds when it is started. */
export interface SampleContent {
  readonly builds?: readonly MemoryBuild[]
  readonly preferences?: Partial<Preferences>
  readonly wrenches?: readonly WrittenWrench[]
  readonly people?: readonly PersonLine[]
  readonly practice?: SamplePractice
  /** A newer revision of the spec of its builds, with its text. */
  readonly newer?: { readonly line: LibraryLine; readonly text: string }
  /** Listed beside the demo engines. */
  readonly faulty?: readonly EngineLine[]
}

/** What a bench is that nobody has changed. */
export const usualPreferences: Preferences = { ...firstPreferences, person: 'I. Brandvold', theme: 'light' }

/** A host in memory: builds are begun and carried on as on disk, and gone with the page. */
export function memoryHost({
  builds = [],
  preferences = {},
  wrenches = [],
  people = [],
  practice = { rounds: {}, minimums: {} },
  faulty = [],
  newer,
}: SampleContent = {}): MemoryHandlers {
  let kept: Preferences = { ...usualPreferences, ...preferences }
  let rack: WrittenWrench[] = [...wrenches]
  const heldBuilds = [...builds]
  const find = (build: string) => heldBuilds.find(({ begun }) => begun.id === build)
  const lines = (language: Language) =>
    heldBuilds.map((build) => build.lineBy(specIn(build.engine, language))).reverse()

  return {
    'host.read': () =>
      done({
        host: 'local',
        why: { code: 'hostByItself', facts: {} },
        version: '0',
        dataFolder: '',
        problem: null,
      }),
    'preferences.read': () => done(kept),
    'preferences.keep': (change) => done((kept = { ...kept, ...change } as Preferences)),
    'engines.list': ({ language }) => done([...engines.map((engine) => lineOf(engine, language)), ...faulty]),
    'engines.read': ({ id }) => {
      const engine = engines.find(({ spec }) => spec.id === id)
      return engine ? done({ specText: engine.text }) : refused('engine-unknown', { engine: id }, 'id')
    },

    'builds.list': ({ language }) => done(lines(language)),
    'builds.find': ({ words, language }) => {
      const wanted = words.toLowerCase()
      const found = lines(language).filter(({ name, engine }) =>
        `${name} ${engine}`.toLowerCase().includes(wanted),
      )
      return done({ lines: found, more: false })
    },
    'builds.start': ({ engine: id, name, serial, person }) => {
      const engine = engines.find(({ spec }) => spec.id === id)
      if (!engine) return refused('engine-unknown', { engine: id }, 'engine')
      const number = `2026-${String(heldBuilds.length + 1).padStart(3, '0')}`
      const started = MemoryBuild.start(engine, { id: crypto.randomUUID(), number, name, serial, person })
      if (!started.ok) return started
      heldBuilds.push(started.value)
      return done(started.value.opened)
    },
    'builds.open': ({ build }) => {
      const found = find(build)
      if (!found) return refused('build-unknown', {}, 'build')
      return done({ ...found.opened, ...(newer && { newer: newer.line }) })
    },
    'builds.since': ({ build, after }) => {
      const found = find(build)
      if (!found) return refused('build-unknown', {}, 'build')
      return done({ events: found.opened.events.slice(after) })
    },
    'builds.act': ({ build, after, person, command }) => {
      const found = find(build)
      if (!found) return refused('build-unknown', {}, 'build')
      const { seq } = found.state
      if (after !== seq) return refused('build-moved-on', { last: seq }, 'after')
      const acted = found.act(command, person)
      return acted.ok ? done({ events: [...acted.value] }) : acted
    },

    'photos.add': ({ build, after, person, base64, ...given }) => {
      const found = find(build)
      if (!found) return refused('build-unknown', {}, 'build')
      const { seq } = found.state
      if (after !== seq) return refused('build-moved-on', { last: seq }, 'after')
      const acted = found.act(addPhotoOf(base64, given), person)
      return acted.ok ? done({ events: [...acted.value] }) : acted
    },
    'photos.read': ({ build, entry }) => {
      const photo = find(build)?.state.photos.find(({ seq }) => seq === entry)
      const base64 = photo && samplePhotos.get(photo.photo.sha256)
      if (photo === undefined) return refused('photo-unknown', {}, 'entry')
      if (base64 === undefined) return refused('photo-missing', { step: 1 })
      return done({ base64 })
    },

    'people.list': () => done([...people]),
    'people.enter': ({ who }) => {
      const found = people.find(({ id }) => 'person' in who && id === who.person)
      return found ? done(found) : refused('badge-unknown', {}, 'who')
    },

    ...memoryPractice(people, practice),

    'wrenches.list': () => done(rack),
    'wrenches.keep': ({ wrench }) => {
      const isNew = rack.every(({ id }) => id !== wrench.id)
      return done(
        (rack = isNew ? [...rack, wrench] : rack.map((each) => (each.id === wrench.id ? wrench : each))),
      )
    },
    'wrenches.remove': ({ id }) => done((rack = rack.filter((each) => each.id !== id))),
  }
}

const audited = new Map<string, EngineLine>()

/** The line of an engine, audited once for all hosts of the page: each entry has one of its own. */
function lineOf(engine: Engine, language: Language): EngineLine {
  const spec = specIn(engine, language)
  const key = `${spec.id} ${language}`
  const line = audited.get(key) ?? auditedLine(spec)
  audited.set(key, line)
  return line
}

function auditedLine(spec: EngineSpec): EngineLine {
  const findings = audit(spec)
  const of = (weight: 'fault' | 'doubt') =>
    findings.filter((finding) => finding.weight === weight && !finding.accepted).map(({ problem }) => problem)
  const { id, name, summary, revision, source } = spec
  return {
    ...{ id, name, summary, revision },
    demo: source.kind === 'demo',
    lookedAt: spec.steps.filter(({ secondPerson }) => secondPerson).map((step) => step.name),
    doubts: of('doubt'),
    faults: of('fault'),
  }
}
