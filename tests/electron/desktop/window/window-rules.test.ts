import { describe, expect, it } from 'vitest'
import {
  isOurs,
  origin,
  pageRules,
  pathOf,
  schemeRights,
} from '../../../../electron/desktop/window/window-rules.ts'

describe('the address of the desktop host', () => {
  it.each([`${origin}/index.html`, `${origin}/`, `${origin}/a?b#c`])('is ours: %s', (address) => {
    expect(isOurs(address)).toBe(true)
  })

  it.each([
    'bedplate://app-evil/index.html',
    'bedplate://app.evil.test/',
    'bedplate://evil/app',
    'bedplate://app:80/',
    'bedplate://user@app/',
    'bedplates://app/',
    'http://app/',
    'file:///index.html',
    'about:blank',
    'javascript:alert(1)',
    'data:text/html,x',
    '',
    'app',
  ])('is not ours: %s', (address) => {
    expect(isOurs(address)).toBe(false)
    expect(pathOf(address)).toBeNull()
  })

  it('gives the path that is looked up, and nothing leads out of it', () => {
    expect(pathOf(`${origin}/assets/main.js?v=1`)).toBe('/assets/main.js')
    expect(pathOf(`${origin}/a/../../etc/passwd`)).toBe('/etc/passwd')
    expect(pathOf(`${origin}/%2e%2e%2fetc`)).toBe('/%2e%2e%2fetc')
  })
})

describe('the rules of the desktop window', () => {
  it('hold the page in the sandbox, apart from Node and from the preload', () => {
    expect(pageRules).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webSecurity: true,
      webviewTag: false,
    })
  })

  it('give the own scheme no way round the policy', () => {
    expect(schemeRights).toEqual({ standard: true, secure: true, supportFetchAPI: true })
  })
})
