import type { Component } from 'svelte'
import type { DrillKind } from '../../core/practice/index.ts'
import type { DrillProps } from './drill-props.ts'
import OrderDrill from './OrderDrill.svelte'

/** The view of each kind of drill. */
export const drillViews: Readonly<Partial<Record<DrillKind, Component<DrillProps>>>> = { order: OrderDrill }
