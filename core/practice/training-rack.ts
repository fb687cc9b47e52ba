import { wrench, type WrenchSetup } from '../tightening/index.ts'
import type { Words } from '../words/index.ts'

/** Wrenches as a shop has them, for somebody who has listed none: each bare, and one with an adapter too. */
export function trainingRack(words: Words): readonly WrenchSetup[] {
  const { wrenches } = words.practice.values
  const made = { type: 'II', class: 'A' }
  const rack = [
    ...[
      { id: 'small', range: ['5 N·m', '25 N·m'], unit: 'N·m', step: 0.5 },
      { id: 'inch', range: ['30 lbf·in', '250 lbf·in'], unit: 'lbf·in', step: 5 },
      { id: 'middle', range: ['20 N·m', '110 N·m'], unit: 'N·m', step: 1 },
      { id: 'foot', range: ['20 lbf·ft', '150 lbf·ft'], unit: 'lbf·ft', step: 1 },
      { id: 'large', range: ['60 N·m', '330 N·m'], unit: 'N·m', step: 2 },
    ].map(({ id, range, unit, step }) =>
      wrench.parse({
        ...{ id, name: wrenches[id as keyof typeof wrenches], made, scale: { unit, step } },
        ...{ range: { least: range[0], most: range[1] }, length: '420 mm' },
        adapters:
          id === 'small'
            ? []
            : [{ id: `${id}-adapter`, name: wrenches.adapter, offset: '60 mm', angle: '0 °' }],
      }),
    ),
  ]
  return rack.flatMap((each) => [null, ...each.adapters].map((adapter) => ({ wrench: each, adapter })))
}
