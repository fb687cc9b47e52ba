import { describe, expect, it } from 'vitest'
import { bareFacts, sceneOf, type DrawingFacts, type Scene } from '../../../core/layout/index.ts'
import { looks, type Theme } from '../../../renderer/canvas/look.ts'
import { marksOf } from '../../../renderer/canvas/marks.ts'
import { paint } from '../../../renderer/canvas/paint.ts'
import { svgOf } from '../../../renderer/canvas/svg.ts'
import { demo, factsAt, sheets } from '../../core/layout/demos.ts'
import { Drawn, drawnInSvg } from './drawn.ts'
import { en } from '../../../core/words/index.ts'

const spec = demo('skerry-3')
const sheet = { ...sheets[1]!, heightPx: 930 }

/** Every state of a fastener, a bead, a half to fit, notes of both kinds, a bearing to look at. */
const states: Readonly<Record<string, DrawingFacts>> = {
  'nothing yet': bareFacts('joint'),
  'fitting shells': factsAt(spec, 'joint', 'fitting'),
  'a bead to lay': factsAt(spec, 'joint', 'bead'),
  'mid run, with notes': {
    ...factsAt(spec, 'joint', 'under way'),
    notes: [
      { about: 'fastener/flange-20', kind: 'open', texts: ['Oil in the hole'] },
      { about: 'face/joint', kind: 'measured', texts: ['gap 0.03 mm, at most 0.05 mm'] },
    ],
  },
}

function onCanvas({ shapes, frame }: Scene, theme: Theme): readonly string[] {
  const drawn = new Drawn()
  const layers = ['ground', 'parts', 'overlay'] as const
  for (const layer of layers)
    for (const shape of shapes.filter((each) => each.layer === layer))
      paint(drawn.context, marksOf(shape, looks(theme), frame.width / sheet.widthPx))
  return drawn.said
}

describe.each(Object.entries(states))('canvas and SVG of the case joint: %s', (_, facts) => {
  const scene = sceneOf(en, spec, facts, { from: 'below', turn: 0 }, sheet)

  it.each(['light', 'dark', 'print'] as const)(
    'draw the same things in the same places, colours, widths and words, one after the other: %s',
    (theme) => {
      const svg = svgOf(scene, { theme, widthPx: sheet.widthPx, title: '' })
      const painted = onCanvas(scene, theme)
      expect(painted.length).toBeGreaterThan(50)
      expect(drawnInSvg(svg)).toEqual(painted)
    },
  )
})

describe('every role that these states show', () => {
  const shown = new Set(
    Object.values(states).flatMap((facts) =>
      sceneOf(en, spec, facts, { from: 'below', turn: 0 }, sheet).shapes.map(({ role }) => role),
    ),
  )

  it('includes those of what is next, flagged and noted', () => {
    for (const role of [
      'next',
      'next-half',
      'next-halo',
      'flagged',
      'open-note',
      'measured-note',
      'note-text',
    ])
      expect([...shown]).toContain(role)
  })
})
