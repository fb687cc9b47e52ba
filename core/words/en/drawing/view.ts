/** How the drawing is looked at. */
export const view = {
  title: 'View',
  open: 'View …',
  liesOnTheBench: 'It lies on the bench',
  nose: 'Nose',
  /** Where the nose points, by the side of the sheet. */
  noseSides: { left: 'left', top: 'away from me', right: 'right', bottom: 'towards me' },
  nearer: 'Zoom in',
  further: 'Zoom out',
  wholeSheet: 'Whole sheet',
  onlyStep: 'Show only what the step is about',
  everything: 'Show everything on this face',
  save: 'Save the drawing as SVG',
  flip: 'Flip',
  turn: 'Turn',
  leave: 'Leave',
  inWords: 'The drawing in words',
}
