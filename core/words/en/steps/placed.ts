export interface OfWork {
  readonly at: string
  readonly round: 1 | 2
}
const title = ({ at, round }: OfWork) => (round === 2 ? `${at}, again` : at)

/** What is done place by place: oiled, cleaned, set the right way, aligned, noted. */
export const placed = {
  title,
  /** The big button. */
  done: {
    lubricate: ({ dry }: { readonly dry: boolean }) => (dry ? 'It is dry' : 'It is oiled'),
    clean: 'It is clean',
    orient: 'It lies so',
    align: 'The marks meet',
    'fit-places': 'It is in',
    note: 'Note it',
  },
  turn: ({ turns }: { readonly turns: number }) =>
    `Now turn the crank ${turns} full ${turns === 1 ? 'turn' : 'turns'}. The marks must meet again.`,
  heat: ({ temperature }: { readonly temperature: string }) =>
    `! Hot part: ${temperature}. Check its temperature before the pin goes in.`,
  write: 'What is there',
  places: 'All places',
  read: (facts: OfWork & { readonly done: boolean; readonly note: string | null }) =>
    `${facts.done ? '✓ ' : ''}${title(facts)}${facts.note === null ? '' : `: ${facts.note}`}`,
  allDone: ({ places }: { readonly places: number }) =>
    places === 1 ? '✓ It is done.' : `✓ All ${places} places are done.`,
  undo: 'Undo one …',
  undoWhich: ({ at }: { readonly at: string }) => `${at}: why does it not count?`,
  undoIt: 'Do it again',
  pictures: {
    oil: 'A drop of oil on the bearing surface.',
    dry: 'A drop of oil, crossed out: no oil here.',
    'oil-way': 'Air is blown through an oil way from one end to the other.',
    face: 'A cloth goes over the whole joint face.',
    plug: 'A threaded plug at the end of an oil way.',
    'piston-front': 'A piston from above, its arrow towards the nose at the left.',
    'rod-side': 'A rod on its pin, seen from the nose: the side with the mark faces the viewer.',
    'cap-numbers': 'A rod and its cap with the same number on the same side.',
    'washer-grooves': 'A thrust washer beside its saddle, the oil grooves towards the crank.',
    'seal-lip': 'A seal cut open in its bore, which way its lip points, and how deep it stands.',
    'two-piece-seal': 'The two halves of a seal with sealant at their ends, and the lip cut open.',
    'core-plug': 'A plug cut open in its hole, and how deep it stands.',
    'check-valve': 'A check valve cut open: the way in which oil lifts its ball.',
    strainer: 'A strainer seen from its gauze.',
    'circlip-gap': 'A circlip in its groove, the gap turned away from the notch.',
    'circlip-seated':
      'A piston cut through its pin: the circlip lies in its groove all around, outside the end of the pin.',
    'pin-offset': 'A piston from the nose: its pin lies to one side of the middle.',
    'piston-heated': 'A piston on a hot plate, with a thermometer; the pin goes in while it is warm.',
    'timing-marks': 'Two wheels whose marks meet on the line between their centres.',
    'chain-link': 'A chain around its wheel: the bright link lies on the dot.',
    'mark-at-line': 'A wheel whose mark stands at a line beside it.',
    'wheel-on-key': 'A wheel on its shaft, its key seated in the slot.',
    'ring-heated': 'A ring on a hot plate, with a thermometer.',
    'ring-in-groove': 'A bearing cut open in its bore: the ring around it lies in the groove of the case.',
    'oil-jet': 'A nozzle below its piston: the jet meets the underside of the crown.',
    'flat-side': 'A round part from its end: which way its flat side lies.',
    'drive-slot': 'The slot of a drive from its end: it lies beside the middle.',
    'crank-pressed': 'A crank that is pressed together: a web goes onto the pin.',
    writing: 'A plate with writing on it.',
  },
  sheet: {
    title: 'Done place by place',
    place: 'Place',
    what: 'What',
    undone: ({ reason }: { readonly reason: string }) => `Did not count: ${reason}`,
  },
}
