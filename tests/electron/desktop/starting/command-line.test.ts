import { describe, expect, it } from 'vitest'
import { filesIn, readCommandLine } from '../../../../electron/desktop/starting/command-line.ts'

const place = { appPath: '/opt/bedplate', packed: false, cwd: '/home/ana' }

describe('the command line of the desktop host', () => {
  it('begins after the folder of the application, where it is not packed', () => {
    expect(
      readCommandLine(['/opt/electron', '/opt/bedplate', '--data', 'bench', 'a.bedplate'], place),
    ).toEqual({
      data: 'bench',
      specs: undefined,
      files: ['/home/ana/a.bedplate'],
    })
  })

  it('passes over what a driver of Electron puts before that folder', () => {
    const words = [
      '/opt/electron',
      '-r',
      '/loader.js',
      '--inspect=0',
      '--remote-debugging-port=0',
      '/opt/bedplate',
      '/x/y.json',
    ]
    expect(readCommandLine(words, place).files).toEqual(['/x/y.json'])
  })

  it('begins after the program, where it is packed', () => {
    const packed = { ...place, packed: true }
    expect(
      readCommandLine(['/opt/bedplate/bedplate', '/work bench/a b.bedplate', 'c.json'], packed).files,
    ).toEqual(['/work bench/a b.bedplate', '/home/ana/c.json'])
    expect(readCommandLine(['/opt/bedplate/bedplate'], packed)).toEqual({
      data: undefined,
      specs: undefined,
      files: [],
    })
  })

  it('takes the folder of specs, and the application by a path that is relative', () => {
    const words = ['electron', '../../opt/bedplate', '--specs=/srv/specs', '--data', '/d']
    expect(readCommandLine(words, place)).toEqual({ data: '/d', specs: '/srv/specs', files: [] })
  })

  it('leaves switches of Chromium and a --data without a folder alone', () => {
    const words = ['electron', '/opt/bedplate', '--ozone-platform=wayland', '--data=']
    expect(readCommandLine(words, place)).toEqual({ data: undefined, specs: undefined, files: [] })
  })
})

describe('what a second start hands over', () => {
  it('are its files, and nothing where it is of another kind', () => {
    expect(filesIn({ files: ['/a.bedplate', '/b.json'] })).toEqual(['/a.bedplate', '/b.json'])
    for (const other of [undefined, null, [], { files: '/a' }, { files: [7] }])
      expect(filesIn(other)).toEqual([])
  })
})
