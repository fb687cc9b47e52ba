import { posix } from 'node:path'
import type { ImportGraph } from './cycles.ts'

const [begin, end] = ['<!-- drawn by `npm run layers` -->', '<!-- end of what is drawn -->']

/** The text with the picture between its two marks drawn again. Throws where the marks are not there. */
export function withPicture(text: string, graph: ImportGraph): string {
  const [from, to] = [text.indexOf(begin), text.indexOf(end)]
  if (from < 0 || to < from) throw new Error(`the text lacks ${begin} … ${end}`)
  return `${text.slice(0, from)}${begin}\n\n\`\`\`mermaid\n${pictureOf(graph)}\n\`\`\`\n\n${text.slice(to)}`
}

const layers = ['renderer', 'electron', 'core'] as const

/**
 * The layers and their folders with the imports between them, as Mermaid draws it. An arrow that others lead along is left
 * out, so that the picture shows the order and not every import. The renderer's folders are pages and their parts, which
 * open one another: they have no order, and no arrows.
 */
export function pictureOf(graph: ImportGraph): string {
  const arrows = new Map<string, Set<string>>()
  for (const [file, targets] of graph)
    for (const target of targets) {
      const [from, to] = [folderOf(file), folderOf(target)]
      if (from === null || to === null || from === to) continue
      if (layerOf(from) !== layerOf(to) || layerOf(from) === 'renderer') continue
      arrows.set(from, (arrows.get(from) ?? new Set()).add(to))
    }
  const folders = [...new Set([...graph.keys()].flatMap((file) => folderOf(file) ?? []))].toSorted()
  const lines = layers.flatMap((layer) => [
    `  subgraph ${layer}`,
    ...folders.filter((folder) => layerOf(folder) === layer).map((folder) => `    ${nodeOf(folder)}`),
    '  end',
  ])
  const drawn = folders.flatMap((from) =>
    [...(arrows.get(from) ?? [])]
      .filter((to) => !leadsAlong(arrows, from, to))
      .toSorted()
      .map((to) => `  ${from.replace('/', '-')} --> ${to.replace('/', '-')}`),
  )
  return ['flowchart TB', ...lines, '  renderer ==> core', '  electron ==> core', ...drawn].join('\n')
}

function nodeOf(folder: string): string {
  return `${folder.replace('/', '-')}["${posix.basename(folder)}"]`
}

/** `core/engine`; null for a file outside the layers or beside their folders. */
function folderOf(file: string): string | null {
  const [layer, folder, ...rest] = file.split('/')
  if (layer === undefined || folder === undefined || rest.length === 0) return null
  return (layers as readonly string[]).includes(layer) ? `${layer}/${folder}` : null
}

function layerOf(folder: string): string {
  return folder.split('/')[0]!
}

/** Whether `to` is also reached from `from` by way of another folder that does not lead back to `from`. */
function leadsAlong(arrows: ReadonlyMap<string, ReadonlySet<string>>, from: string, to: string): boolean {
  const reach = (start: string): ReadonlySet<string> => {
    const seen = new Set<string>()
    const open = [start]
    for (let at = open.pop(); at !== undefined; at = open.pop())
      for (const next of arrows.get(at) ?? [])
        if (!seen.has(next)) {
          seen.add(next)
          open.push(next)
        }
    return seen
  }
  return [...(arrows.get(from) ?? [])].some((via) => {
    const reached = reach(via)
    return via !== to && reached.has(to) && !reached.has(from)
  })
}
