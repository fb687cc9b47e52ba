import type { Outcome } from '../../../core/problem/index.ts'
import { newtonMetres } from '../../../core/quantity/index.ts'
import {
  adapter,
  wrench,
  type WrenchSetup,
  type TorqueWindow,
  type Wrench,
} from '../../../core/tightening/index.ts'
import { lineOf } from '../../problem-line.ts'

/** A click wrench from 20 to 100 N·m in whole ones, ±4 %, calibrated in March. */
export const written = {
  id: 'medium',
  name: 'Medium click wrench',
  range: { least: '20 N·m', most: '100 N·m' },
  scale: { unit: 'N·m', step: 1 },
  made: { type: 'II', class: 'A' },
  calibration: { on: '2026-03-02', cycles: 120 },
}

export function medium(change: object): Wrench {
  return wrench.parse({ ...written, ...change })
}

/** A click wrench from 4 to 20 N·m in fifths, ±4 %. */
export function small(change: object = {}): Wrench {
  const own = { id: 'small', name: 'Small click wrench', range: { least: '4 N·m', most: '20 N·m' } }
  return medium({ ...own, scale: { unit: 'N·m', step: 0.2 }, ...change })
}

/** A click wrench from 60 to 300 N·m in fives, ±4 %. */
export function large(change: object = {}): Wrench {
  const own = { id: 'large', name: 'Large click wrench', range: { least: '60 N·m', most: '300 N·m' } }
  return medium({ ...own, scale: { unit: 'N·m', step: 5 }, ...change })
}

export function setupOf(read: Wrench, foot: { offset: string; angle: string } | null = null): WrenchSetup {
  return { wrench: read, adapter: foot && adapter.parse({ id: 'foot', name: 'Crow foot', ...foot }) }
}

export function window(target: number, least: number, most: number): TorqueWindow {
  const limits = { target: newtonMetres(target), least: newtonMetres(least), most: newtonMetres(most) }
  return { kind: 'torque', ...limits, tolerance: 'spec' }
}

export function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(lineOf(outcome.problem))
  return outcome.value
}
