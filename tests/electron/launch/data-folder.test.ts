import { describe, expect, it } from 'vitest'
import { dataFolder, type Surroundings } from '../../../electron/launch/data-folder.ts'

const linux: Surroundings = { platform: 'linux', env: {}, home: '/home/ada', cwd: '/srv/bench' }

describe('the data folder', () => {
  it("is the platform's own place for application data", () => {
    expect(dataFolder(undefined, linux)).toBe('/home/ada/.local/share/bedplate')
    expect(dataFolder(undefined, { ...linux, platform: 'darwin', home: '/Users/ada' })).toBe(
      '/Users/ada/Library/Application Support/Bedplate',
    )
    const windows = { ...linux, platform: 'win32', env: { APPDATA: '/c/AppData' } } as const
    expect(dataFolder(undefined, windows)).toBe('/c/AppData/Bedplate')
  })

  it('follows XDG_DATA_HOME where that is a whole path, as its specification asks', () => {
    expect(dataFolder(undefined, { ...linux, env: { XDG_DATA_HOME: '/data' } })).toBe('/data/bedplate')
    expect(dataFolder(undefined, { ...linux, env: { XDG_DATA_HOME: 'data' } })).toBe(
      '/home/ada/.local/share/bedplate',
    )
  })

  it('is that of BEDPLATE_DATA before it, and that of --data before all', () => {
    const env = { BEDPLATE_DATA: '/mnt/builds', XDG_DATA_HOME: '/data' }
    expect(dataFolder(undefined, { ...linux, env })).toBe('/mnt/builds')
    expect(dataFolder('/srv/try', { ...linux, env })).toBe('/srv/try')
  })

  it('is relative to where the command was typed', () => {
    expect(dataFolder('try', linux)).toBe('/srv/bench/try')
    expect(dataFolder('../try', linux)).toBe('/srv/try')
  })

  it('is not the empty name', () => {
    expect(dataFolder(undefined, { ...linux, env: { BEDPLATE_DATA: '' } })).toBe(
      '/home/ada/.local/share/bedplate',
    )
  })
})
