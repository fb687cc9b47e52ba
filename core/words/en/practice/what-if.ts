/** Any order of a procedure tried on the model of its joint. */
export const whatIf = {
  name: 'What if',
  about: 'Any order of your own on the model of a joint, against the order of the spec. Nothing is scored.',
  begin: 'Begin What if',
  none: 'Not for this engine: What if, because no pass goes over two fasteners.',
  procedure: 'Procedure',
  tap: 'In which order? Tap the fasteners one after the other, or take a pattern.',
  soFar: ({ done, of }: { readonly done: number; readonly of: number }) => `${done} of ${of} tapped`,
  pattern: 'Take a pattern',
  patterns: {
    spiral: 'spiral',
    'centre-out': 'centre out',
    crosswise: 'crosswise',
    'row-by-row': 'row by row',
    'ends-first': 'ends first',
    'end-to-end': 'end to end',
    reversed: 'the spec’s from its end',
  },
  takeBack: 'Take the last tap back',
  rest: 'The rest as in the spec',
  again: 'Another order',
  calculating: 'The model is run in both orders …',
  tapped: ({ place, where }: { readonly place: number; readonly where: string }) =>
    `Tapped as ${place}, ${where}`,
}
