import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { cyclesIn } from './layers/cycles.ts'
import { faultOf, faultsOfOrder, faultsOfTable } from './layers/faults.ts'
import { graphOf, importsByFile } from './layers/files.ts'
import { importsOf } from './layers/imports.ts'
import { withPicture } from './layers/picture.ts'
import { coreFolders } from './layers/table.ts'

const root = join(import.meta.dirname, '..')
const imports = importsByFile(root)
const files = [...imports.keys()]
const graph = graphOf(imports)

describe('layers', () => {
  it('are kept by every import of the program', () => {
    const faults = [...imports].flatMap(([path, found]) =>
      found.flatMap(({ specifier, line }) => {
        const fault = faultOf(path, specifier)
        return fault === undefined ? [] : [`${path}:${line} imports ${specifier}. ${fault}`]
      }),
    )
    expect(faults).toEqual([])
  })

  it('are looked at in every kind of source file', () => {
    expect(files.length).toBeGreaterThan(20)
    expect(files).toContain('core/contract/contract.ts')
    expect(files).toContain('electron/launch/start.mjs')
    expect(files).toContain('vite.config.ts')
  })

  it('and the folders of core are imported in one direction: no file leads back to itself, by types either', () => {
    const known = [...graph.values()].flat().filter((target) => graph.has(target))
    expect(known.length).toBeGreaterThan(1000)
    expect(cyclesIn(graph)).toEqual([])
  })

  it('of core are its folders, each listed after those it stands on', () => {
    const folders = readdirSync(join(root, 'core'), { withFileTypes: true }).filter((each) =>
      each.isDirectory(),
    )
    expect(Object.keys(coreFolders).toSorted()).toEqual(folders.map(({ name }) => name).toSorted())
    expect(faultsOfOrder()).toEqual([])
  })

  it('are drawn in DEVELOPERS.md as the imports have them: `npm run layers` draws them again', () => {
    const text = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8')
    expect(text).toBe(withPicture(text, graph))
  })

  it('are given to every dependency of package.json', () => {
    const listed = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    const names = ['dependencies', 'devDependencies', 'optionalDependencies'].flatMap((kind) =>
      Object.keys(listed[kind]),
    )
    expect(faultsOfTable(names)).toEqual([])
  })
})

describe('the reader of imports', () => {
  it('sees every way to name a module', () => {
    const text = [
      `import a from './a.ts'`,
      `import type { B } from './b.ts'`,
      `import './c.css'`,
      `export * from './d.ts'`,
      `const e = await import('./e.ts')`,
      `type F = import('./f.ts').F`,
      `const g = require('./g.cjs')`,
      `const text = "import h from './not-an-import.ts'" // import './nor-this.ts'`,
    ].join('\n')
    expect(importsOf('core/x/y.ts', text)).toEqual([
      { specifier: './a.ts', line: 1 },
      { specifier: './b.ts', line: 2 },
      { specifier: './c.css', line: 3 },
      { specifier: './d.ts', line: 4 },
      { specifier: './e.ts', line: 5 },
      { specifier: './f.ts', line: 6 },
      { specifier: './g.cjs', line: 7 },
    ])
  })

  it('sees both script blocks of a component, at the lines of the file', () => {
    const text = `<script module lang="ts">\n  import a from './a.ts'\n</script>\n\n<p>import x from './no.ts'</p>\n<script lang="ts">import b from './b.ts'</script>\n`
    expect(importsOf('renderer/x.svelte', text)).toEqual([
      { specifier: './a.ts', line: 2 },
      { specifier: './b.ts', line: 6 },
    ])
  })
})

describe('the finder of rings', () => {
  it('finds each group of files that lead to one another, and nothing else', () => {
    const graph = new Map([
      ['a.ts', ['b.ts', 'd.ts']],
      ['b.ts', ['c.ts']],
      ['c.ts', ['a.ts', 'zod']],
      ['d.ts', ['e.ts']],
      ['e.ts', []],
      ['f.ts', ['f.ts']],
    ])
    expect(cyclesIn(graph)).toEqual([['a.ts', 'b.ts', 'c.ts'], ['f.ts']])
  })

  it('is not misled where two ways lead to one file', () => {
    const graph = new Map([
      ['a.ts', ['b.ts', 'c.ts']],
      ['b.ts', ['d.ts']],
      ['c.ts', ['d.ts']],
      ['d.ts', []],
    ])
    expect(cyclesIn(graph)).toEqual([])
  })
})

describe('the judge of imports', () => {
  it.each([
    ['core/bearing/choose.ts', 'zod'],
    ['core/bearing/choose.ts', './clearance.ts'],
    ['core/bearing/choose.ts', '../quantity/index.ts'],
    ['core/contract/contract.ts', '../builds/index.ts'],
    ['electron/store/open.ts', '../../core/contract/index.ts'],
    ['electron/store/open.ts', 'node:fs'],
    ['electron/store/open.ts', '../requests/index.ts'],
    ['renderer/App.svelte', '../core/layout/index.ts'],
    ['renderer/App.svelte', 'svelte/reactivity'],
    ['renderer/App.svelte', '../assets/icon.svg'],
    ['tests/core/bearing/choose.test.ts', '../../../core/bearing/candidates.ts'],
    ['vite.config.ts', 'vite'],
  ])('lets %s import %s', (path, specifier) => {
    expect(faultOf(path, specifier)).toBeUndefined()
  })

  it.each([
    ['core/bearing/choose.ts', 'node:fs', 'Do it in electron/'],
    ['core/bearing/choose.ts', 'konva', 'core/ imports zod and nothing else'],
    ['core/bearing/choose.ts', '../../renderer/theme.ts', 'Take what is needed as an argument'],
    ['core/bearing/choose.ts', '../../electron/store/open.ts', 'move the pure part of it into core/'],
    ['core/bearing/choose.ts', '../quantity/length.ts', 'Import from core/quantity/index.ts'],
    ['core/bearing/choose.ts', '../../specs/demo.json', 'Read it as a file'],
    ['core/bearing/choose.ts', '../words.ts', 'Move core/words.ts into a folder'],
    ['core/engine/read.ts', '../audit/index.ts', 'core/engine/ comes before core/audit/'],
    ['core/bearing/choose.ts', '../plane/index.ts', 'core/bearing/ does not stand on core/plane/'],
    ['core/valves/lash.ts', '../quantity/index.ts', 'Add it to coreFolders'],
    ['renderer/board/draw.ts', '../../electron/requests/index.ts', 'Add a request to core/contract/'],
    ['renderer/board/draw.ts', '../../core/engine/schema.ts', 'Import from core/engine/index.ts'],
    ['renderer/board/draw.ts', 'path', 'by a request of core/contract/'],
    ['renderer/board/draw.ts', 'better-sqlite3', 'belongs to electron, not to renderer'],
    ['electron/store/open.ts', '../../renderer/client.ts', 'move what both need into core/'],
    ['electron/store/open.ts', '../../tests/bench/measure.ts', 'Move what is needed into electron/'],
    ['electron/store/open.ts', 'fs', 'Write node:fs'],
    ['electron/store/open.ts', 'svelte', 'belongs to renderer'],
    ['electron/store/open.ts', 'some-package', 'Add it to package.json'],
    ['electron/store/open.ts', 'oxlint', 'Leave the import out'],
    [
      'tests/core/engine/load.test.ts',
      '../../../core/quantity/length.ts',
      'Import from core/quantity/index.ts',
    ],
    ['tests/core/engine/load.test.ts', '../../../../elsewhere/x.ts', 'outside the project'],
    ['vite.config.ts', './core/contract/index.ts', 'The configuration may not import core/'],
  ])('refuses %s importing %s and says what to do', (path, specifier, fix) => {
    expect(faultOf(path, specifier)).toContain(fix)
  })

  it('refuses a dependency without a layer, and a layer without a dependency', () => {
    const faults = faultsOfTable(['zod', 'some-package'])
    expect(faults).toContain(
      '“some-package” has no layer. Add it to tests/layers/table.ts with the layers that may import it.',
    )
    expect(faults).toContain('“konva” is no longer in package.json. Take it out of tests/layers/table.ts.')
  })
})
