import { counted } from '../formats.ts'

/** What `npm run audit` prints about engine specs. */
export const auditReport = {
  usage: `npm run audit -- FILE …   read engine specs and say what is wrong in them and what is doubtful

It ends with 0 where every spec can be built, with 1 where one cannot, and with 2 where no file is named.`,
  /** The first line of a spec. */
  heading: ({
    file,
    faults,
    doubts,
  }: {
    readonly file: string
    readonly faults: number
    readonly doubts: number
  }) => {
    const found = [
      ...(faults > 0 ? [counted(faults, 'fault', 'faults')] : []),
      ...(doubts > 0 ? [counted(doubts, 'doubt', 'doubts')] : []),
    ]
    return `${file}: ${faults > 0 ? 'cannot' : 'can'} be built, ${found.length > 0 ? found.join(', ') : 'nothing doubtful'}`
  },
  /** Behind the sentence of a doubt that somebody accepted. */
  because: (facts: { readonly by: string; readonly on: string; readonly reason: string }) =>
    `Accepted by ${facts.by} on ${facts.on}, because: ${facts.reason}`,
  /** A line below it; `place` is where in the file, and empty where it is about the whole of it. */
  line: (facts: {
    readonly weight: 'fault' | 'doubt' | 'accepted'
    readonly place: string
    readonly sentence: string
  }) => `  ${facts.weight}  ${facts.place === '' ? '' : `${facts.place}: `}${facts.sentence}`,
}
