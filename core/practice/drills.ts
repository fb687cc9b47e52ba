import type { EngineSpec } from '../engine/index.ts'
import { angleDrill } from './angle-drill.ts'
import { faultKindsOf } from './fault/build-fault.ts'
import { chartDrill } from './chart-drill.ts'
import { mirrorDrill } from './mirror/mirror-drill.ts'
import { orderDrill } from './order/order-drill.ts'
import { drillKinds, type DrillKind } from './round.ts'
import { valuesDrill } from './values-drill.ts'

/** The drills that an engine can be practised with, in the order in which they are learned. */
export function drillsOf(spec: EngineSpec): readonly DrillKind[] {
  const offers: Readonly<Record<DrillKind, () => boolean>> = {
    order: () => orderDrill(spec, '') !== null,
    chart: () => chartDrill(spec, '') !== null,
    values: () => valuesDrill(spec, '', [], 'N·m', '2026-01-01') !== null,
    angle: () => angleDrill(spec, '') !== null,
    mirror: () => mirrorDrill(spec, '') !== null,
    measure: () => true,
    fault: () => faultKindsOf(spec).length > 0,
  }
  return drillKinds.filter((kind) => offers[kind]())
}

/** From what a drill is drawn: another one after each round, and the same again for somebody who does the same again. */
export function seedOf(engine: string, drill: DrillKind, rounds: number): string {
  return `${engine}/${drill}/${rounds}`
}
