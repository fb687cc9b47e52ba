interface At {
  /** The saddle, rod or bearing; the fit's name where it is about all of them. */
  readonly place: string
}
interface Counts {
  readonly part: string
  readonly read: number
  readonly expected: number
}

/** Sentences about marks, shells and clearances. Sizes come as text with their unit. */
export const bearingWords = {
  'mark-unknown': (facts: {
    readonly position: string
    readonly part: string
    readonly mark: string
    readonly known: readonly string[]
  }) =>
    `${facts.position}: “${facts.mark}” is not a mark of ${facts.part}. Known marks are ${facts.known.join(', ')}; ` +
    'type ? for one that is worn away.',
  'marks-too-few': ({ part, read, expected }: Counts) =>
    `${part}: ${read} of ${expected} marks were read. Type one for each place, ? for one that is worn away.`,
  'marks-too-many': ({ part, read, expected }: Counts) =>
    `${part}: ${read} marks were read, but there are ${expected} places. Take out what is not a mark.`,
  'marks-ambiguous': ({ part, typed }: { readonly part: string; readonly typed: string }) =>
    `${part}: “${typed}” can be read as marks in more than one way. Put a blank between the marks.`,
  'mark-worn': ({ place, part }: At & { readonly part: string }) =>
    `${place}: the mark of ${part} is not known. Measure it and choose the shells from the reading.`,
  'mark-without-band': ({ place, part, mark }: At & { readonly part: string; readonly mark: string }) =>
    `${place}: the spec gives no size for mark ${mark} of ${part}. Measure it and choose the shells from the reading.`,
  'chart-cell-missing': ({
    place,
    housing,
    journal,
  }: At & { readonly housing: string; readonly journal: string }) =>
    `${place}: the chart has no shells for marks ${housing} and ${journal}. Read both marks again, or measure.`,
  'grade-unknown': ({
    place,
    grade,
    known,
  }: At & { readonly grade: string; readonly known: readonly string[] }) =>
    `${place}: ${grade} is not a grade of this fit. Its grades are ${known.join(', ')}.`,
  'wall-unknown': ({ place, grade }: At & { readonly grade: string }) =>
    `${place}: the spec gives no wall thickness for grade ${grade}. Measure the shell's wall.`,
  'no-walls-known': ({ place }: At) =>
    `${place}: the spec gives no wall thickness for its grades. Measure the shells' walls.`,
  'no-pair-inside-limits': (
    facts: At & {
      readonly upper: string
      readonly lower: string
      readonly clearance: string
      readonly limits: string
    },
  ) =>
    `${facts.place}: no allowed pair of shells is sure to stay inside ${facts.limits}; nearest is ${facts.upper} above ` +
    `and ${facts.lower} below, ${facts.clearance}. Measure bore and journal and choose from the readings.`,
  'clearance-leaves-limits': (facts: At & { readonly clearance: string; readonly limits: string }) =>
    `${facts.place}: clearance ${facts.clearance}, allowed ${facts.limits}. Measure bore, journal and shells ` +
    'before closing it.',
}
