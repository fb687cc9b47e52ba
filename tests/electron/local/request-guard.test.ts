import { describe, expect, it } from 'vitest'
import { authorize } from '../../../electron/local/request-guard.ts'

const identity = { port: 4711, token: 'kR0vO5cWfN2rZ6mXq1Yb8sTtHh3uJj7pLl9aDdEeGgI' }
const host = ['Host', '127.0.0.1:4711']
const good = [
  ...host,
  'Origin',
  'http://127.0.0.1:4711',
  'x-bedplate-token',
  identity.token,
  'Content-Type',
  'application/json',
  'Sec-Fetch-Site',
  'same-origin',
]

function without(name: string): string[] {
  const at = good.indexOf(name)
  return good.toSpliced(at, 2)
}
function having(name: string, value: string): string[] {
  return [...without(name), name, value]
}
function post(rawHeaders: readonly string[], target = '/request/builds.act') {
  return authorize({ method: 'POST', target, rawHeaders }, identity)
}
function get(target: string, rawHeaders: readonly string[] = host, method = 'GET') {
  return authorize({ method, target, rawHeaders }, identity)
}

describe('the request guard of the local host', () => {
  it('lets a request of its own window in', () => {
    expect(post(good)).toEqual({ to: 'request', name: 'builds.act' })
    expect(post(having('Content-Type', 'application/json; charset=utf-8'))).toMatchObject({ to: 'request' })
  })

  it('shows the page without a token: the token comes with the address fragment, which is not sent', () => {
    expect(get('/')).toEqual({ to: 'page', target: '/' })
  })

  it.each([
    ['another name', ['Host', 'bedplate.evil.test:4711']],
    ['localhost', ['Host', 'localhost:4711']],
    ['another port', ['Host', '127.0.0.1:4712']],
    ['no port', ['Host', '127.0.0.1']],
    ['a longer name', ['Host', '127.0.0.1:4711.evil.test']],
    ['a user before it', ['Host', 'x@127.0.0.1:4711']],
    ['none', []],
    ['two', [...host, ...host]],
    ['a second one of another name', [...host, 'host', 'evil.test']],
  ])('turns away a Host that is %s', (_, headers) => {
    expect(get('/', headers)).toEqual({ to: 'nowhere', status: 421 })
    expect(post([...without('Host'), ...headers])).toEqual({ to: 'nowhere', status: 421 })
  })

  it.each([
    ['missing', without('x-bedplate-token')],
    ['empty', having('x-bedplate-token', '')],
    ['wrong', having('x-bedplate-token', 'nonsense')],
    ['of the same length', having('x-bedplate-token', identity.token.replace(/.$/, 'J'))],
    ['in another case', having('x-bedplate-token', identity.token.toLowerCase())],
    ['a part of it', having('x-bedplate-token', identity.token.slice(0, -1))],
    ['there twice', [...good, 'x-bedplate-token', identity.token]],
  ])('turns away a token that is %s', (_, headers) => {
    expect(post(headers)).toEqual({ to: 'nowhere', status: 401 })
  })

  it.each([
    ['missing', without('Origin')],
    ['null', having('Origin', 'null')],
    ['of another port', having('Origin', 'http://127.0.0.1:4712')],
    ['of a longer name', having('Origin', 'http://127.0.0.1:4711.evil.test')],
    ['by https', having('Origin', 'https://127.0.0.1:4711')],
    ['with a path', having('Origin', 'http://127.0.0.1:4711/')],
    ['localhost', having('Origin', 'http://localhost:4711')],
    ['there twice', [...good, 'Origin', 'http://127.0.0.1:4711']],
  ])('turns away an Origin that is %s', (_, headers) => {
    expect(post(headers)).toEqual({ to: 'nowhere', status: 403 })
  })

  it.each(['cross-site', 'same-site'])('turns away what the browser says is %s', (site) => {
    expect(post(having('Sec-Fetch-Site', site))).toEqual({ to: 'nowhere', status: 403 })
    const asScript = ['Sec-Fetch-Site', site, 'Sec-Fetch-Mode', 'no-cors', 'Sec-Fetch-Dest', 'script']
    expect(get('/main.js', [...host, ...asScript])).toEqual({ to: 'nowhere', status: 403 })
    const inFrame = ['Sec-Fetch-Site', site, 'Sec-Fetch-Mode', 'navigate', 'Sec-Fetch-Dest', 'iframe']
    expect(get('/', [...host, ...inFrame])).toEqual({ to: 'nowhere', status: 403 })
  })

  it('lets a tab be led to the page from a file on disk, as the browser window is opened', () => {
    const led = ['Sec-Fetch-Site', 'cross-site', 'Sec-Fetch-Mode', 'navigate', 'Sec-Fetch-Dest', 'document']
    expect(get('/', [...host, ...led])).toEqual({ to: 'page', target: '/' })
    expect(post([...without('Sec-Fetch-Site'), ...led])).toEqual({ to: 'nowhere', status: 403 })
  })

  it.each([
    'text/plain',
    'application/x-www-form-urlencoded',
    'multipart/form-data',
    'application/jsonp',
    '',
  ])('turns away a body of the type “%s”, which a form of another site can send', (type) => {
    expect(post(having('Content-Type', type))).toEqual({ to: 'nowhere', status: 415 })
  })

  it.each(['OPTIONS', 'PUT', 'DELETE', 'HEAD', 'PATCH', 'TRACE', 'CONNECT'])(
    'turns away the method %s',
    (method) => {
      expect(get('/', good, method)).toEqual({ to: 'nowhere', status: 405 })
    },
  )

  it('changes nothing by GET: a request is only a page that is not there', () => {
    expect(get('/request/builds.act')).toEqual({ to: 'page', target: '/request/builds.act' })
  })

  it.each([
    ['//127.0.0.1/', 400],
    ['http://127.0.0.1:4711/', 400],
    ['*', 400],
    ['', 400],
    ['/a b', 400],
    ['/é', 400],
  ])('turns away the address %j', (target, status) => {
    expect(get(target)).toEqual({ to: 'nowhere', status })
  })

  it('turns away an address of 8 kB', () => {
    expect(get(`/${'a'.repeat(8192)}`)).toEqual({ to: 'nowhere', status: 414 })
  })

  it.each([
    '/request/',
    '/request/Builds.act',
    '/request/a/b',
    '/request/..',
    '/other',
    '/',
    '/request/__proto__',
  ])('knows no request at %s', (target) => {
    expect(post(good, target)).toEqual({ to: 'nowhere', status: 404 })
  })
})
