import { existsSync, readFileSync, realpathSync, statSync } from 'node:fs'
import { delimiter, posix, win32 } from 'node:path'

type Env = Readonly<Record<string, string | undefined>>

/** Where a browser that can show an app window would be, best first. */
export function browserPlaces(platform: NodeJS.Platform, env: Env, home: string): readonly string[] {
  if (platform === 'win32') return windowsPlaces(env)
  if (platform === 'darwin') return macPlaces(home)
  const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge']
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  return names.flatMap((name) => folders.map((folder) => posix.join(folder, name)))
}

function windowsPlaces(env: Env): readonly string[] {
  const programs = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe']
  const folders = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA]
  return programs.flatMap((program) =>
    folders.flatMap((folder) => (folder === undefined ? [] : [win32.join(folder, program)])),
  )
}

function macPlaces(home: string): readonly string[] {
  return ['Google Chrome', 'Chromium', 'Microsoft Edge'].flatMap((name) =>
    ['/Applications', posix.join(home, 'Applications')].map((folder) =>
      posix.join(folder, `${name}.app/Contents/MacOS/${name}`),
    ),
  )
}

/** The first browser of the list that is there and may read what this program writes. */
export function browserAmong(places: readonly string[]): string | undefined {
  return places.find((place) => existsSync(place) && !isConfined(place))
}

/** A snap sees no hidden folder of its user, so neither its profile nor the page that leads it in could lie in the data folder. */
function isConfined(place: string): boolean {
  if (realpathSync(place).endsWith('/snap')) return true
  return statSync(place).size < 10_000 && readFileSync(place, 'latin1').includes('/snap/bin/')
}
