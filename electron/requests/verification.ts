import type { Verification } from '../../core/contract/index.ts'
import { done, problem, refused } from '../../core/problem/index.ts'
import { headCode } from '../store/index.ts'
import type { Break, Store, ChainVerification } from '../store/index.ts'
import { told } from './answer.ts'
import type { HandlersOf } from './handlers.ts'
import { lineOf } from './open-build.ts'

/** Answers about following the chains, which takes as long as the record is long and is stopped when asked. */
export function verificationRequests(
  store: Store,
  now: () => Date,
  failed: (error: unknown) => void,
): { handlers: HandlersOf<'verification'>; stop: () => void } {
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
    store.verify({ only: build, signal, onProgress }).then(
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
    { builds, entries, head, breaks }: ChainVerification,
  ): Verification {
    return {
      state: 'done',
      build,
      at: now().toISOString(),
      builds,
      entries,
      head: headCode(head),
      breaks: breaks.map(({ build, entry }) => ({
        build,
        number: numberOf(build),
        problem: brokenAt({ build, entry }),
      })),
    }
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
      'verification.stop': () => {
        stop()
        return done(state)
      },
    },
    stop,
  }
}

function brokenAt({ entry }: Break) {
  return told(entry === null ? problem('build-spec-lost', {}) : problem('build-chain-broken', { entry }))
}
