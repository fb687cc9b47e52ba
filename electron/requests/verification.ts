import type { Verification } from '../../core/contract/index.ts'
import { done, problem, refused } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import { headCode } from '../store/index.ts'
import type { Break, ChainVerification, PhotoBreak, Store, Witness } from '../store/index.ts'
import { compareWith } from './exchange/compare-file.ts'
import type { HandlersOf } from './handlers.ts'
import { lineOf, mayLeave, openBuild } from './open-build.ts'
import { photoProblem } from './photos.ts'

/** Answers about following the chains, which takes as long as the record is long and is stopped when asked. */
export function verificationRequests(services: {
  readonly store: Store
  readonly now: () => Date
  readonly failed: (error: unknown) => void
  /** Heads that are kept outside the record. */
  readonly outside: () => readonly Witness[]
  readonly keepHead: (witness: Witness) => Outcome<null>
}): { handlers: HandlersOf<'verification'>; stop: () => void } {
  const { store, now, failed } = services
  let state: Verification = { state: 'none' }
  let current = new AbortController()

  function stop(): void {
    current.abort()
    if (state.state === 'running') state = { state: 'stopped', build: state.build }
  }

  function start(build: string | null): void {
    current.abort()
    const { signal } = (current = new AbortController())
    state = { state: 'running', build, builds: 0, of: 1 }
    const onProgress = (builds: number, of: number): void =>
      void (state = { state: 'running', build, builds, of })
    store.verify({ only: build, signal, onProgress, witnesses: services.outside() }).then(
      (verification) => {
        if (verification !== null && !signal.aborted) state = doneWith(build, verification)
      },
      (error: unknown) => {
        if (signal.aborted) return
        state = { state: 'stopped', build }
        failed(error)
      },
    )
  }

  function doneWith(
    build: string | null,
    { builds, entries, head, witnesses, breaks, photoBreaks }: ChainVerification,
  ): Verification {
    return {
      state: 'done',
      build,
      at: now().toISOString(),
      builds,
      entries,
      head: headCode(head),
      witnesses,
      lists: breaks.some(({ kind }) => kind === 'list' || kind === 'unlisted' || kind === 'spec-swapped'),
      breaks: [
        ...breaks.map((found) => ({
          build: found.build,
          number: nameOf(found),
          problem: problemOf(found),
        })),
        ...photoBreaks.map((found) => ({
          build: found.build,
          number: numberOf(found.build),
          problem: ofPhoto(found),
        })),
      ],
    }
  }

  function ofPhoto({ build, step, state }: PhotoBreak): Problem {
    const opened = openBuild(store, build)
    return photoProblem(state, opened.ok ? opened.value.spec.steps : [], step)
  }

  /** The number in the list; of a build that the list has lost, the name its first entry gave it. */
  function nameOf(found: Break): string {
    if (found.kind === 'unlisted') return [found.name, found.serial].filter(Boolean).join(', ')
    return numberOf(found.build)
  }

  function numberOf(build: string): string {
    const row = store.build(build)
    return row === null ? '' : lineOf(row).number
  }

  return {
    handlers: {
      'verification.start': ({ build }) => {
        if (build !== null && store.build(build) === null) return refused('build-unknown', {}, 'build')
        start(build)
        return done(state)
      },
      'verification.read': () => done(state),
      'verification.compare': ({ name, base64 }) => compareWith(store, name, base64),
      'verification.keep-head': ({ build }) => {
        const last = store.entries(build).at(-1)
        if (last === undefined) return refused('build-unknown', {}, 'build')
        // The head of a build that is not as confirmed vouches for nothing: it is not kept, and its sheet says so.
        const opened = openBuild(store, build)
        if (!opened.ok) return opened
        if (opened.value.readOnly !== null && !mayLeave(opened.value.readOnly)) return done({})
        const at = now().toISOString()
        const kept = services.keepHead({ kind: 'sheet', build, entries: last.seq, head: last.sha256, at })
        return kept.ok ? done({}) : kept
      },
      'verification.stop': () => {
        stop()
        return done(state)
      },
    },
    stop,
  }
}

function problemOf(found: Break): Problem {
  switch (found.kind) {
    case 'entry':
      return problem('build-chain-broken', { entry: found.entry })
    case 'spec-lost':
      return problem('build-spec-lost', {})
    case 'spec-altered':
      return problem('build-spec-altered', {})
    case 'spec-swapped':
      return problem('build-spec-swapped', {})
    case 'list':
      return problem('build-list-differs', { columns: found.columns })
    case 'unlisted':
      return problem('build-unlisted', {})
    case 'number-missing':
      return problem('build-number-missing', { number: found.number })
    case 'witness':
      return problem('witness-differs', found.witness)
    default:
      return found satisfies never
  }
}
