/** A script of its own that is loaded when it is asked for; answered at once where it is there already. */
export function onDemand<Module>(load: () => Promise<Module>): () => Module | Promise<Module> {
  let loaded: Module | undefined
  return () => loaded ?? load().then((module) => (loaded = module))
}
