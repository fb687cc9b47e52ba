type None = Record<never, never>

/** Sentences about a revision that a build could go on by. */
export const revisionWords = {
  'revision-none': (_: None) =>
    'The library has no newer revision of the spec that this build goes by. Open the build again and look.',
  'revision-of-another': ({ engine }: { readonly engine: string }) =>
    `This spec is of another engine, “${engine}”. A build keeps its engine. Begin a new build for the other one.`,
  'revision-same': (_: None) => 'The build goes by this revision already. Go on with it.',
  'revision-step-begun': ({ step }: { readonly step: string }) =>
    `“${step}” is half done, and it is ended by the revision that it was begun by. End it or undo it; then take the revision over.`,
  'revision-opens-others': ({ others }: { readonly others: readonly string[] }) =>
    others.length === 0
      ? 'The newer revision opens no step again any more. Look at it once more, then confirm.'
      : `The newer revision opens ${others.map((other) => `“${other}”`).join(', ')} again. Look at the list once more, then confirm.`,
  'revision-not-taken-apart': ({ first }: { readonly first: string }) =>
    `Before the revision is taken over, undo at the bench what the list says, “${first}” first, and say that it is undone.`,
}
