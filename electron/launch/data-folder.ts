import { isAbsolute, join, resolve } from 'node:path'

export type Surroundings = {
  readonly platform: NodeJS.Platform
  readonly env: Readonly<Record<string, string | undefined>>
  readonly home: string
  /** Where the person stood when typing the command: what `--data` is relative to. */
  readonly cwd: string
}

/**
 * Where builds are kept: `--data` before `BEDPLATE_DATA` before the platform's own place for application data (on Linux
 * by the XDG Base Directory Specification 0.8, which has a relative path there ignored).
 */
export function dataFolder(named: string | undefined, { platform, env, home, cwd }: Surroundings): string {
  const chosen = named ?? env.BEDPLATE_DATA
  if (chosen !== undefined && chosen !== '') return resolve(cwd, chosen)
  if (platform === 'win32') return join(env.APPDATA ?? join(home, 'AppData/Roaming'), 'Bedplate')
  if (platform === 'darwin') return join(home, 'Library/Application Support/Bedplate')
  const xdg = env.XDG_DATA_HOME
  return join(xdg !== undefined && isAbsolute(xdg) ? xdg : join(home, '.local/share'), 'bedplate')
}
