import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../..')
const files = globSync('renderer/**/*.{svelte,svelte.ts}', { cwd: root })

/** What an effect does at once: functions in it are for later, but for what it does untracked. */
function atOnce(node: ts.Node, found: (each: ts.Node) => void): void {
  const isLater = ts.isFunctionLike(node) && !isUntracked(node.parent)
  if (isLater) return
  found(node)
  ts.forEachChild(node, (child) => atOnce(child, found))
}

function isUntracked(parent: ts.Node): boolean {
  return ts.isCallExpression(parent) && parent.expression.getText() === 'untrack'
}

/** The names of `$state` that effects of a source write as they run. */
function writtenByEffects(text: string, name: string): readonly string[] {
  const script = name.endsWith('.svelte')
    ? (/<script lang="ts">([^]*?)<\/script>/.exec(text)?.[1] ?? '')
    : text
  const source = ts.createSourceFile(name, script, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS)
  const states = new Set<string>()
  const effects: ts.Node[] = []
  const look = (node: ts.Node): void => {
    if ((ts.isVariableDeclaration(node) || ts.isPropertyDeclaration(node)) && node.initializer !== undefined)
      if (/^\$state\b/.test(node.initializer.getText())) states.add(node.name.getText())
    if (ts.isCallExpression(node) && /^\$effect(\.pre)?$/.test(node.expression.getText())) {
      const [effect] = node.arguments
      if (effect !== undefined && ts.isArrowFunction(effect)) effects.push(effect.body)
    }
    ts.forEachChild(node, look)
  }
  look(source)
  const written: string[] = []
  for (const effect of effects)
    atOnce(effect, (node) => {
      if (!ts.isBinaryExpression(node)) return
      const { kind } = node.operatorToken
      if (kind < ts.SyntaxKind.FirstAssignment || kind > ts.SyntaxKind.LastAssignment) return
      const to = node.left.getText().replace(/^this\./, '')
      if (states.has(to)) written.push(`${name}: ${to}`)
    })
  return written
}

describe('an effect', () => {
  it('writes no state as it runs: what follows from other state is derived from it', () => {
    const withEffects = files
      .map((file) => ({ file, text: readFileSync(join(root, file), 'utf8') }))
      .filter(({ text }) => text.includes('$effect('))
    expect(withEffects.length).toBeGreaterThan(20)
    expect(withEffects.flatMap(({ file, text }) => writtenByEffects(text, file))).toEqual([])
  })

  it('is seen to write, untracked as well, and not to write what comes later', () => {
    const writes = (body: string) =>
      writtenByEffects(`let found = $state(0)\n$effect(() => { ${body} })`, 'one.svelte.ts').length
    expect(writes('found = 1')).toBe(1)
    expect(writes('untrack(() => (found = 1))')).toBe(1)
    expect(writes('setTimeout(() => (found = 1))')).toBe(0)
  })
})
