import { registerHooks } from 'node:module'

/** These names are built into Electron's Node: patches/node/fix_expose_the_built-in_electron_module_via_the_esm_loader.patch */
const names = new Set(['electron', 'electron/main', 'electron/common'])
const played = new URL('electron.ts', import.meta.url).href

registerHooks({
  resolve: (specifier, context, next) =>
    names.has(specifier) ? { url: played, shortCircuit: true } : next(specifier, context),
})
