import type { Draft } from '../engine/demo.ts'

/** A demo, and a change that makes one thing of it wrong. */
export type OneWrong = readonly [demo: string, change: (spec: Draft) => unknown]
