import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { z } from 'zod'
import { isLanguage, type Language } from '../../../core/words/index.ts'

/** What the desktop host was asked for when it was started. */
export interface CommandLine {
  /** The data folder as typed; the platform's own place when absent. */
  readonly data: string | undefined
  /** Where the engine specs lie; those of the program when absent. */
  readonly specs: string | undefined
  /** What the bench speaks from now on; as it was when absent. */
  readonly language: Language | undefined
  /** Files to open, with their whole paths. */
  readonly files: readonly string[]
}

/**
 * Reads the words that Electron's program was started with. Not packed, they begin with its own switches and the folder of
 * the application (default_app/main.ts), which are left out; switches of Chromium's are passed over.
 */
export function readCommandLine(
  words: readonly string[],
  { appPath, packed, cwd }: { readonly appPath: string; readonly packed: boolean; readonly cwd: string },
): CommandLine {
  const application = packed ? 0 : words.findIndex((word, at) => at > 0 && resolve(cwd, word) === appPath)
  const { values, positionals } = parseArgs({
    args: words.slice(Math.max(application, packed ? 0 : 1) + 1),
    options: { data: { type: 'string' }, specs: { type: 'string' }, language: { type: 'string' } },
    allowPositionals: true,
    strict: false,
  })
  const path = (value: unknown): string | undefined =>
    typeof value === 'string' && value !== '' ? value : undefined
  return {
    data: path(values.data),
    specs: path(values.specs),
    language:
      typeof values.language === 'string' && isLanguage(values.language) ? values.language : undefined,
    files: positionals.filter((word) => word !== '').map((word) => resolve(cwd, word)),
  }
}

const handedOver = z.object({ files: z.array(z.string()) })

/**
 * The files that a second start hands to the one that runs. Its command line is not gone by, because Chromium puts words of its
 * own into it (docs/api/app.md, `second-instance`); what another program sends opens nothing.
 */
export function filesIn(data: unknown): readonly string[] {
  const read = handedOver.safeParse(data)
  return read.success ? read.data.files : []
}
