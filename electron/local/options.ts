import { parseArgs } from 'node:util'

export interface LocalOptions {
  /** As typed; the platform's own place when absent. */
  readonly data: string | undefined
  readonly window: boolean
}

/** What the local host is told on its command line; what it does not know it throws at, since only `npm start` calls it. */
export function localOptions(words: readonly string[]): LocalOptions {
  const { values } = parseArgs({
    args: [...words],
    options: { data: { type: 'string' }, 'no-window': { type: 'boolean' }, local: { type: 'boolean' } },
  })
  return { data: values.data, window: values['no-window'] !== true }
}
