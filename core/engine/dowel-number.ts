interface OnAFace {
  readonly id: string
  readonly face: string
}

/** Which dowel of its face one is, in the order of the spec: 1 is the first. Dowels have no number in a manual. */
export function dowelNumber(dowels: readonly OnAFace[], dowel: OnAFace): string {
  const onItsFace = dowels.filter(({ face }) => face === dowel.face)
  return String(onItsFace.findIndex(({ id }) => id === dowel.id) + 1)
}
