import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { currentStep, stepStates } from '../../../core/builds/index.ts'
import { shippedEngine, Workshop } from './workshop.ts'

const demos = readdirSync(new URL('../../../specs/', import.meta.url))
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replace('.json', ''))

describe.each(demos)('a whole build of %s', (engine) => {
  it('comes from bare case to finished without being refused once', () => {
    const shop = new Workshop(shippedEngine(engine))
    while (!shop.state.finished) shop.goesOn()
    expect(stepStates(shop.spec, shop.state).map(({ state }) => state)).toEqual(
      shop.spec.steps.map(() => 'done'),
    )
    expect(currentStep(shop.spec, shop.state)).toBeNull()
  })

  it('does the steps in the order in which the spec lists them', () => {
    const shop = new Workshop(shippedEngine(engine))
    const worked: string[] = []
    while (!shop.state.finished) {
      const step = currentStep(shop.spec, shop.state)
      if (step !== null && worked.at(-1) !== step.id) worked.push(step.id)
      shop.goesOn()
    }
    expect(worked).toEqual(shop.spec.steps.map(({ id }) => id))
  })
})
