/** The topics of the help, by what they are about, in the order in which they are listed. */
export const helpTopics = {
  start: [
    'engines',
    'guided-build',
    'start-build',
    'build-window',
    'again-and-skip',
    'drawing',
    'interrupted',
  ],
  steps: [
    'marks',
    'shells',
    'measuring',
    'fit-shells',
    'fit-part',
    'placed',
    'bead',
    'check',
    'limits',
    'rings',
    'turning',
    'photo',
    'count',
  ],
  tightening: ['run', 'angle', 'stretch', 'flags', 'own-order'],
  papers: ['finish', 'sheet', 'order-and-labels', 'bench-card', 'clamp-map', 'archive', 'comparison'],
  bench: [
    'people',
    'second-person',
    'library',
    'editor',
    'wrenches',
    'instruments',
    'screen-and-keys',
    'record',
    'shop',
    'damaged-record',
    'practice',
  ],
} as const

export type HelpGroup = keyof typeof helpTopics
export type HelpTopicId = (typeof helpTopics)[HelpGroup][number]
