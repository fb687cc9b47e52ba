/** What in a spec a finding is about, as it stands in the sentence of the finding. */
export const auditPhrases = {
  partOfFit: ({
    fit,
    part,
    mark,
  }: {
    readonly fit: string
    readonly part: string
    readonly mark: string | null
  }) => `${fit}, ${part}${mark === null ? '' : `, mark ${mark}`}`,
  gradeOfFit: ({ fit, grade }: { readonly fit: string; readonly grade: string }) => `${fit}, grade ${grade}`,
  oilClearance: ({ fit }: { readonly fit: string }) => `${fit}, oil clearance`,
  rodSideClearance: (_: Record<never, never>) => 'rod side clearance',
  endFloat: (_: Record<never, never>) => 'end float',
  endFloatOfWasher: ({ washer }: { readonly washer: string }) => `end float, washer “${washer}”`,
  measureCalled: ({ name }: { readonly name: string }) => name,
  passOf: ({ procedure, pass }: { readonly procedure: string; readonly pass: number }) =>
    `${procedure}, pass ${pass}`,
  fastenerNumbered: ({ number }: { readonly number: string }) => `fastener ${number}`,
  dowelCalled: ({ dowel }: { readonly dowel: string }) => `dowel ${dowel}`,
  facePartCalled: ({ name }: { readonly name: string }) => `“${name}”`,
  passageCalled: ({ name }: { readonly name: string }) => `“${name}”`,
}
