export interface OfReason {
  readonly reason: string
}
export interface OfStep {
  readonly step: string
}

/** The plan of a build: what is done again, and what it goes without. */
export const plan = {
  /** The ways offered at a step. */
  doAgain: 'Do this step again …',
  skip: 'Skip this step …',
  takeBackSkip: 'Do it after all …',
  /** How a step stands, in the panel and in the list of steps. */
  isSkipped: ({ reason }: OfReason) => `SKIPPED: ${reason}`,
  skipped: 'This step is skipped.',
  /** `other` is the step that is done again where it is not this one. */
  again: ({ reason, other }: OfReason & { readonly other: string | null }) =>
    other === null ? `To be done again: ${reason}` : `To be done again, since “${other}” is: ${reason}`,
  whySkip: 'Why is it skipped?',
  skipIt: 'Skip it',
  whyAfterAll: 'Why is it done after all?',
  doAfterAll: 'Do it after all',
  whyAgain: 'Why is it done again?',
  againNow: 'Do it again',
  opensNone: 'No other step is open again with it.',
  opens: 'These are open again with it:',
  opensIfOther: 'If a mark reads otherwise, these are open again:',
  marksAlone: 'What stands on the marks stays done, unless they read otherwise.',
  undoFirst: 'First undo at the bench, in this order:',
  deeds: {
    loosen: ({ step }: OfStep) => `${step}: loosen all, in reverse order`,
    'take-out-part': ({ step }: OfStep) => `${step}: take it off or out`,
    'clean-off-bead': ({ step }: OfStep) => `${step}: clean the sealant off both faces`,
    'take-out-shells': ({ step }: OfStep) => `${step}: take the shells out`,
    'take-off-rings': ({ step }: OfStep) => `${step}: take the rings off`,
  },
  isUndone: 'It is undone at the bench',
  sheet: {
    redone: 'Done again',
    /** `stamp` is of the first round, `again` when and by whom it was opened. */
    row: (facts: OfReason & { readonly again: string; readonly takenApart: boolean }) =>
      `Done again: ${facts.reason} (${facts.again}${facts.takenApart ? '; taken apart at the bench' : ''}).`,
    /** How the step stood in the round before: skipped, done by an entry, or only begun. */
    first: ({ stamp, skipped }: { readonly stamp: string | null; readonly skipped: boolean }) =>
      skipped ? 'skipped before' : stamp === null ? 'begun before' : `done before: ${stamp}`,
    alsoOpen: 'open again with it:',
    skipped: 'SKIPPED STEPS',
    skippedRow: ({ reason, stamp }: OfReason & { readonly stamp: string }) => `${reason} (${stamp}).`,
    afterAll: ({ reason, stamp }: OfReason & { readonly stamp: string }) =>
      `Taken back: ${reason} (${stamp}).`,
    inList: ({ reason }: OfReason) => `! SKIPPED: ${reason}`,
    timesAgain: ({ times }: { readonly times: number }) =>
      times === 1 ? '; done again once' : `; done again ${times} times`,
  },
}
