import type { EngineSpec } from '../../engine/index.ts'
import type { Scene } from '../../layout/index.ts'
import type { Words } from '../../words/index.ts'

/**
 * A drawing with the numbers of its fasteners taken off, but for those of `shown`, on the sheet and in its words alike: what is
 * left of a fastener is where it is and whether it is pulled. Two that the spec says to be in the same place are told apart by a
 * letter. They are listed by their names: the list of a drawing goes by number.
 */
export function unnumbered(
  words: Words,
  spec: EngineSpec,
  scene: Scene,
  shown: ReadonlySet<string> = new Set(),
): Scene {
  const hidden = new Map(
    spec.fasteners
      .filter(({ id }) => !shown.has(id))
      .map(({ id, where, face }) => [`fastener/${id}`, { where, face }]),
  )
  const rows = scene.rows.map((row) => {
    const place = hidden.get(row.about)
    if (place === undefined) return row
    const alike = scene.rows.filter(({ about }) => hidden.get(about)?.where === place.where)
    const letter = alike.length > 1 ? letterAt(alike.indexOf(row)) : null
    return {
      ...row,
      text: words.practice.fastener({ where: place.where, letter, isPulled: row.state === 'done' }),
    }
  })
  const named = rows.filter(({ about }) => hidden.has(about)).toSorted((a, b) => (a.text < b.text ? -1 : 1))
  const others = rows.filter(({ about }) => !hidden.has(about))
  const isNumber = (shape: Scene['shapes'][number]) =>
    shape.kind === 'text' && shape.about !== undefined && hidden.has(shape.about)
  return { ...scene, rows: [...others, ...named], shapes: scene.shapes.filter((shape) => !isNumber(shape)) }
}

function letterAt(place: number): string {
  return String.fromCharCode(97 + (place % 26)).repeat(Math.floor(place / 26) + 1)
}
