import { join } from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

const core = join(import.meta.dirname, '../core')

/** The names that the compiler does not find in a file of core, of those that the snippet uses. */
function unknownNamesIn(snippet: string): readonly string[] {
  const file = join(core, 'snippet.ts')
  const read = ts.readConfigFile(join(core, 'tsconfig.json'), (path) => ts.sys.readFile(path))
  const { options } = ts.parseJsonConfigFileContent(read.config, ts.sys, core)
  const host = ts.createCompilerHost(options)
  const sourceOf = host.getSourceFile.bind(host)
  host.getSourceFile = (path, ...rest) =>
    path === file ? ts.createSourceFile(path, snippet, ts.ScriptTarget.ES2024) : sourceOf(path, ...rest)
  const program = ts.createProgram([file], options, host)
  return program
    .getSemanticDiagnostics(program.getSourceFile(file))
    .map((fault) => ts.flattenDiagnosticMessageText(fault.messageText, ' '))
    .map((sentence) => /Cannot find name '(\w+)'/.exec(sentence)?.[1] ?? sentence)
}

describe('core', () => {
  it('does not compile when it uses the page, Node, a timer or the console', () => {
    const names = ['window', 'document', 'process', 'Buffer', 'setTimeout', 'fetch', 'console', 'performance']
    expect(unknownNamesIn(names.map((name) => `export const my_${name} = ${name}`).join('\n'))).toEqual(names)
  })

  it('compiles when it uses the language alone', () => {
    expect(unknownNamesIn('export const total = [1, 2].reduce((a, b) => a + Math.abs(b), 0)')).toEqual([])
  })
})
