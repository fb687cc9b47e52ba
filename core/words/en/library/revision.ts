/** A newer revision of the spec that a build goes by: what differs, and how it is taken over. */
export const revision = {
  newer: ({ revision: number }: { readonly revision: number }) =>
    `Revision ${number} of this spec is in the library. The build goes on by its own.`,
  look: 'See what differs',
  title: ({ name, revision: number }: { readonly name: string; readonly revision: number }) =>
    `${name}: revision ${number}`,
  backToBuild: 'Build',
  none: 'This build goes by the latest revision that the library has.',
  keeps: 'The build goes by its own revision, and to the end, unless the newer one is taken over here.',
  differences: 'What differs',
  drawings: 'On the drawing',
  ringed: 'What differs has a ring round it and a letter; the list below says what it is.',
  outline: 'the outline',
  sameDrawing: 'Nothing on the drawing differs.',
  ofBuild: ({ face }: { readonly face: string }) => `${face}, as this build has it`,
  ofNewer: ({ face }: { readonly face: string }) => `${face}, as the newer revision has it`,
  how: { added: 'new', gone: 'not in the newer one', moved: 'moved', changed: 'changed' },
  taking: 'Taking it over',
  opensNone: 'It says nothing else of what was done: no step is open again.',
  opens: 'It says something else of what was done, or of what that stands on. Open again are:',
  marksReadAgain: ({ fit }: { readonly fit: string }) => `${fit}: marks are read again`,
  readingsGone: ({ fit }: { readonly fit: string }) =>
    `${fit}: readings, undersizes and the tray are entered again`,
  ownOrderGone: ({ procedure }: { readonly procedure: string }) =>
    `${procedure}: the order of one’s own no longer holds`,
  why: 'Why is it taken over?',
  take: 'Take it over',
  sheet: {
    title: 'Revisions of the spec',
    row: (facts: {
      readonly before: string
      readonly after: string
      readonly reason: string
      readonly stamp: string
      readonly takenApart: boolean
    }) =>
      `From “${facts.before}” to “${facts.after}”: ${facts.reason} (${facts.stamp}${facts.takenApart ? '; taken apart at the bench' : ''}).`,
  },
}
