import { readFileSync } from 'node:fs'
import { registerHooks, stripTypeScriptTypes } from 'node:module'
import { fileURLToPath } from 'node:url'
import { compile, compileModule } from 'svelte/compiler'
import { render } from 'svelte/server'
import type { Bench } from '../../renderer/bench/bench.svelte.ts'
import { provideBench } from '../../renderer/bench/context.ts'
import { provideWords } from '../../renderer/words.ts'
import { en } from '../../core/words/index.ts'
import { takeNoted, type Control, type ControlKind } from './controls.ts'

/** The components in which a person enters something, by their files: in their place stands what notes how each is used. */
const controls: Readonly<Record<string, ControlKind>> = {
  'Field.svelte': 'field',
  'TypedField.svelte': 'typed',
  'SelectField.svelte': 'select',
  'TickField.svelte': 'tick',
  'TickList.svelte': 'ticks',
  'ColourField.svelte': 'colour',
}
const editor = new URL('../../renderer/editor/', import.meta.url).href
const fields = `${editor}fields/`

// Node itself imports the components, made for a server: there is no page here, and none is needed to see what a form offers.
registerHooks({
  resolve(specifier, context, next) {
    const found = next(specifier, context)
    const kind = found.url.startsWith(fields) ? controls[found.url.slice(fields.length)] : undefined
    return kind === undefined
      ? found
      : next(new URL(`./control-stub.ts?${kind}`, import.meta.url).href, context)
  },
  load(url, context, next) {
    const isModule = url.endsWith('.svelte.ts')
    if (!isModule && !url.endsWith('.svelte')) return next(url, context)
    const filename = fileURLToPath(url)
    const source = readFileSync(filename, 'utf8')
    const { js } = isModule
      ? compileModule(stripTypeScriptTypes(source), { filename, generate: 'server' })
      : compile(source, { filename, generate: 'server', css: 'external' })
    return { format: 'module', source: js.code, shortCircuit: true }
  },
})

interface Renderer {
  component(inside: (renderer: Renderer) => void): void
}
type Component = (renderer: Renderer, props: object) => void

/** Imports what the editor has in a file, `case/CasePanel.svelte` say. */
export function ofEditor<Module>(file: string): Promise<Module> {
  return import(`${editor}${file}`) as Promise<Module>
}

const bench = { language: 'en', crew: { name: 'Ana Ruiz' } } as unknown as Bench

/** The controls of a component of the editor. */
export function controlsIn(
  { default: component }: { readonly default: unknown },
  props: object,
): readonly Control[] {
  const host: Component = (renderer) =>
    renderer.component((inside) => {
      provideBench(bench)
      provideWords(en)
      ;(component as Component)(inside, props)
    })
  takeNoted()
  void render(host as never, { props: {} }).body
  return takeNoted()
}
