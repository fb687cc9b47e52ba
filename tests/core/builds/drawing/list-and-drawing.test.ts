import { describe, expect, it } from 'vitest'
import { currentStep, drawingFacts } from '../../../../core/builds/index.ts'
import { sceneOf, type Role, type Scene, type SceneRow } from '../../../../core/layout/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { demos } from '../../layout/demos.ts'
import { Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

const sheet = { widthPx: 1400, heightPx: 950, capitalPx: 18 }

/** The drawings of a build from its first step to its last: three of every step, of what it is about and of everything, with a problem noted in every run. */
function drawingsOf(spec: EngineSpec): readonly { readonly scene: Scene; readonly where: string }[] {
  const shop = new Workshop(spec)
  const seen = new Map<string, number>()
  const drawings = []
  while (!shop.state.finished) {
    const step = currentStep(spec, shop.state)
    const times = step === null ? Infinity : (seen.get(step.id) ?? 0)
    if (step !== null && [0, 3, 9].includes(times)) {
      const { workedFrom: from } = spec.case.faces[0]!
      const facts = drawingFacts(en, spec, shop.state, step)
      for (const subject of [facts.subject, 'everything'] as const) {
        const scene = sceneOf(en, spec, { ...facts, subject }, { from, turn: 0 }, sheet)
        drawings.push({ scene, where: `${step.id}, entry ${shop.entries.length}, ${subject}` })
      }
      if (step.kind === 'run-procedure' && times === 3) {
        const { procedure } = step
        const { orders } = spec.procedures.find(({ id }) => id === procedure)!
        const fastener = orders[0]!.sequence.at(-1)!
        shop.does({ type: 'note-problem', procedure, fastener, text: 'Thread feels rough' })
      }
    }
    if (step !== null) seen.set(step.id, times + 1)
    shop.goesOn()
  }
  return drawings
}

/** What a role of a thing's shapes means for its row. */
const meanings: Readonly<Partial<Record<Role, (row: SceneRow) => boolean>>> = {
  next: ({ state }) => state === 'next',
  'next-half': ({ state, text }) => state === 'next' && text.includes('next to fit'),
  'after-next': ({ state }) => state === 'after-next',
  'partly-done': ({ state }) => state === 'partly-done',
  done: ({ state }) => state === 'done',
  flagged: ({ state }) => state === 'flagged',
  'shell-fitted': ({ text }) => text.includes(', fitted'),
  'shell-unknown': ({ text }) => text.includes('shell not chosen'),
  'bead-laid': ({ state }) => state === 'laid',
  'bead-to-lay': ({ state }) => state === 'to-lay',
}

describe.each(demos.map((spec) => ({ spec, name: spec.id })))(
  'list and drawing of a build of $name',
  ({ spec }) => {
    const drawings = drawingsOf(spec)

    it('are looked at in every state that a thing can have', () => {
      expect(drawings.length).toBeGreaterThan(2 * spec.steps.length)
      const shown = new Set(drawings.flatMap(({ scene }) => scene.shapes.map(({ role }) => role)))
      const beads = spec.beads.length > 0 ? [] : ['bead-laid', 'bead-to-lay']
      for (const role of Object.keys(meanings).filter((each) => !beads.includes(each)))
        expect([...shown]).toContain(role)
    })

    it('speak of the same things', () => {
      for (const { scene, where } of drawings) {
        const drawn = new Set(scene.shapes.flatMap(({ about }) => about ?? []))
        expect([...drawn].sort(), where).toEqual(scene.rows.map(({ about }) => about).sort())
      }
    })

    it('say the same of each: next, done, flagged, fitted, unknown, laid', () => {
      const otherwise: string[] = []
      for (const { scene, where } of drawings) {
        const shapes = Map.groupBy(scene.shapes, ({ about }) => about)
        for (const row of scene.rows) {
          const roles = new Set(shapes.get(row.about)?.map(({ role }) => role))
          for (const [role, holds] of Object.entries(meanings))
            if (roles.has(role as Role) !== (holds(row) && belongs(role as Role, row)))
              otherwise.push(`${where}: ${role}, ${row.text}`)
        }
      }
      expect(otherwise).toEqual([])
    })

    it('have the same grades, values and notes in words', () => {
      const compared = { grades: 0, values: 0 }
      for (const { scene, where } of drawings)
        for (const shape of scene.shapes) {
          if (shape.kind !== 'text' || shape.about === undefined) continue
          const row = scene.rows.find(({ about }) => about === shape.about)?.text ?? ''
          const words = `${where}: ${shape.id}`
          if (shape.id.endsWith('/grade')) {
            compared.grades += 1
            expect(row, words).toContain(`grade ${shape.text}`)
          }
          if (shape.id.endsWith('/value')) {
            compared.values += 1
            // In a small place the words of a problem are cut, and the list has all of them.
            expect(row, words).toContain(shape.text.replace(/^fit/, 'grade').replace(/…$/, ''))
          }
          if (shape.text.endsWith('µm')) expect(row, words).toContain(shape.text)
        }
      expect(compared.grades).toBeGreaterThan(60)
      expect(compared.values).toBeGreaterThan(10)
    })
  },
)

/** A tick and `next` mean one thing at a half and another at a fastener. */
function belongs(role: Role, { about, state }: SceneRow): boolean {
  const isHalf = about.startsWith('half/')
  if (role === 'next-half' || role === 'shell-fitted' || role === 'shell-unknown') return isHalf
  if (role === 'next') return isHalf || about.startsWith('fastener/')
  return state !== 'plain'
}
