import { createHash } from 'node:crypto'
import { isAbsolute, join } from 'node:path'
import type { Surroundings } from '../../launch/data-folder.ts'

/**
 * Where Chromium keeps what belongs to the window of one data folder: a place of its own for each, so that there is one
 * window for each data folder, and on the user's own disk, because the lock is made of symbolic links and a socket, which a
 * FAT disk, where the data folder may well lie, does not have (shell/browser/api/electron_api_app.cc,
 * `RequestSingleInstanceLock`: such a lock is simply refused). On Linux by the XDG Base Directory Specification 0.8.
 *
 * @param dataFolder Absolute, with symbolic links resolved.
 */
export function windowFolder(dataFolder: string, { platform, env, home }: Omit<Surroundings, 'cwd'>): string {
  const name = createHash('sha256').update(dataFolder, 'utf8').digest('hex').slice(0, 16)
  if (platform === 'win32')
    return join(env.LOCALAPPDATA ?? join(home, 'AppData/Local'), 'Bedplate/windows', name)
  if (platform === 'darwin') return join(home, 'Library/Application Support/Bedplate windows', name)
  const xdg = env.XDG_STATE_HOME
  return join(
    xdg !== undefined && isAbsolute(xdg) ? xdg : join(home, '.local/state'),
    'bedplate/windows',
    name,
  )
}
