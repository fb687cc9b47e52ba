import { describe, expect, it } from 'vitest'
import { windowFolder } from '../../../../electron/desktop/window/window-folder.ts'

const home = '/home/ana'

describe('the folder of the window', () => {
  it('is on the user’s own disk, and never in the data folder', () => {
    const linux = windowFolder('/media/stick/bench', { platform: 'linux', env: {}, home })
    expect(linux).toMatch(/^\/home\/ana\/\.local\/state\/bedplate\/windows\/[0-9a-f]{16}$/)
    expect(windowFolder('/media/stick/bench', { platform: 'darwin', env: {}, home })).toMatch(
      /^\/home\/ana\/Library\/Application Support\/Bedplate windows\/[0-9a-f]{16}$/,
    )
    expect(windowFolder('/d', { platform: 'win32', env: { LOCALAPPDATA: '/local' }, home })).toMatch(
      /^\/local\/Bedplate\/windows\/[0-9a-f]{16}$/,
    )
  })

  it('is another one for each data folder, and the same at each start', () => {
    const of = (data: string) => windowFolder(data, { platform: 'linux', env: {}, home })
    expect(of('/srv/bench 1')).toBe(of('/srv/bench 1'))
    expect(new Set(['/srv/bench 1', '/srv/bench 2', '/srv/Prüfstand', '/srv/верстак'].map(of)).size).toBe(4)
  })

  it('follows XDG_STATE_HOME where that is a whole path', () => {
    const of = (XDG_STATE_HOME: string) =>
      windowFolder('/d', { platform: 'linux', env: { XDG_STATE_HOME }, home })
    expect(of('/state')).toMatch(/^\/state\/bedplate\/windows\//)
    expect(of('state')).toMatch(/^\/home\/ana\/\.local\/state\//)
  })
})
