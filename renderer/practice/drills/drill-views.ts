import type { Component } from 'svelte'
import type { DrillKind } from '../../../core/practice/index.ts'
import AngleDrill from './AngleDrill.svelte'
import ChartDrill from './ChartDrill.svelte'
import type { DrillProps } from './drill-props.ts'
import MeasureDrill from './MeasureDrill.svelte'
import MirrorDrill from './MirrorDrill.svelte'
import FaultDrill from './FaultDrill.svelte'
import OrderDrill from './OrderDrill.svelte'
import ValuesDrill from './ValuesDrill.svelte'

/** The view of each kind of drill. */
export const drillViews: Readonly<Record<DrillKind, Component<DrillProps>>> = {
  order: OrderDrill,
  chart: ChartDrill,
  values: ValuesDrill,
  angle: AngleDrill,
  mirror: MirrorDrill,
  measure: MeasureDrill,
  fault: FaultDrill,
}
