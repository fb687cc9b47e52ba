import fs from 'node:fs'
import { syncBuiltinESMExports } from 'node:module'

/**
 * Electron answers for all that reads folders itself, so that archives look like folders. How it reads whole trees is not
 * played: a main that asks for one throws here.
 */
export function keepToPlainReading(): void {
  const { readdirSync } = fs
  const plain = (...values: Parameters<typeof readdirSync>): unknown => {
    const [, options] = values
    if (typeof options === 'object' && options?.recursive === true)
      throw new Error('stand-in: readdirSync with `recursive` is not played')
    return readdirSync(...values)
  }
  fs.readdirSync = plain as typeof readdirSync
  syncBuiltinESMExports()
}
