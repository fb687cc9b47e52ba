import { describe, expect, it } from 'vitest'
import { sceneOf } from '../../../core/layout/index.ts'
import { boxOf, collisions, discsOf, labelsOf, outside, textsOf, unreal } from './checks.ts'
import { demos, factsAt, sheets, stages, views } from './demos.ts'
import { en } from '../../../core/words/index.ts'
import { isLong } from '../../runs.ts'

const faces = demos.flatMap((spec) =>
  spec.case.faces.map((face) => ({ spec, face, name: `${spec.id}, ${face.name}` })),
)

/** Stage, view and sheet: the long form has all, else a third that has any two of them together, another one on the next face. */
const cases = stages.flatMap((stage) =>
  views.flatMap((view) => sheets.map((sheet) => ({ stage, view, sheet }))),
)
function looked(face: number): typeof cases {
  return cases.filter((_, at) => isLong || (at + Math.floor(at / sheets.length) + face) % sheets.length === 0)
}

describe.each(faces.map((each, at) => ({ ...each, at })))('the drawing of $name', ({ spec, face, at }) => {
  const scenes = looked(at).map(({ stage, view, sheet }) => ({
    ...{ stage, view, sheet, facts: factsAt(spec, face.id, stage) },
    scene: sceneOf(en, spec, factsAt(spec, face.id, stage), view, sheet),
    where: `${stage}, from ${view.from}, turn ${view.turn}, ${sheet.widthPx} px, capitals ${sheet.capitalPx} px`,
  }))

  it('has no label over another, over a fastener or over a shell', () => {
    const found = scenes.flatMap(({ scene, where }) => collisions(scene).map((pair) => `${where}: ${pair}`))
    expect(found).toEqual([])
  })

  it('lies inside its frame, which has the proportions of the sheet', () => {
    for (const { scene, sheet, where } of scenes) {
      expect(outside(scene), where).toEqual([])
      expect(scene.frame.width / scene.frame.height).toBeCloseTo(sheet.widthPx / sheet.heightPx, 9)
    }
  })

  it('draws every fastener of the face once, and no other', () => {
    const own = spec.fasteners.filter((fastener) => fastener.face === face.id).map(({ id }) => id)
    for (const { scene, where } of scenes)
      expect(
        discsOf(scene)
          .map(({ id }) => id)
          .sort(),
        where,
      ).toEqual([...own].sort())
  })

  it('says in its rows what its shapes show: the same things, each once', () => {
    for (const { scene, where } of scenes) {
      const rowsAbout = scene.rows.map(({ about }) => about)
      expect(new Set(rowsAbout).size, where).toBe(rowsAbout.length)
      const drawn = new Set(scene.shapes.flatMap(({ about }) => about ?? []))
      expect([...drawn].sort(), where).toEqual([...rowsAbout].sort())
    }
  })

  it('gives every shape an id of its own and only real numbers', () => {
    for (const { scene, where } of scenes) {
      expect(new Set(scene.shapes.map(({ id }) => id)).size, where).toBe(scene.shapes.length)
      expect(unreal(scene), where).toEqual([])
    }
  })

  if (face.plane === 'plan')
    it('names the ends of the crank outside the case, where the axis leaves it', () => {
      const small = scenes.filter(({ sheet }) => sheet.capitalPx <= 20)
      expect(small.length).toBeGreaterThan(scenes.length / 3)
      for (const { scene, where } of small) {
        const edge = boxOf(scene.shapes.find(({ id }) => id === `face/${face.id}`)!)
        const ends = labelsOf(scene).filter(({ id }) => id === 'nose/name' || id === 'drive/name')
        expect(ends, where).toHaveLength(2)
        for (const label of ends) {
          const { left, top, width, height } = boxOf(label)
          const beside =
            left + width <= edge.left ||
            left >= edge.left + edge.width ||
            top + height <= edge.top ||
            top >= edge.top + edge.height
          expect(beside, `${where}: ${label.text}`).toBe(true)
        }
      }
    })

  it('writes the ends of the crank, the names of the bearings that it is about, and the value of what is next', () => {
    for (const { scene, facts, where } of scenes) {
      const labels = textsOf(scene).map(({ text }) => text)
      if (face.plane === 'plan') expect(labels.join(' '), where).toMatch(/NOSE.*DRIVE END/)
      // Looked at along the crank, neither end has a place on the sheet.
      if (face.plane === 'nose' || face.plane === 'drive') expect(labels, where).not.toContain('NOSE')
      if (facts.callout !== null && facts.subject !== 'check') {
        const value = textsOf(scene).find(({ id }) => id === 'callout/value')!.text
        expect(facts.callout.startsWith(value.replace(/…$/, '')), where).toBe(true)
      }
      if (facts.subject === 'bead' || face.shows === 'flange' || face.plane !== 'plan') continue
      const { saddles, rods, balanceBearings } = spec.case
      const bearings = { saddles, rods, balance: balanceBearings }[face.shows]
      expect(labels, where).toEqual(expect.arrayContaining(bearings.map(({ id }) => id)))
    }
  })
})
