import type { RichText } from '../../rich.ts'
import { counted } from '../formats.ts'

/** The one thing that is wrong with a finished build. */
export const faultDrill = {
  find: 'One thing is wrong with this finished build. Which part? Tap it.',
  shown: 'Shown',
  showns: { drawing: 'drawing', rings: 'rings', sheet: 'sheet' },
  sheet: 'Results of the sheet',
  notThis: 'Nothing is wrong with that one.',
  onFace: ({ face }: { readonly face: string }) => `It is on this face: ${face}.`,
  onRings: ({ piston }: { readonly piston: string }) => `It is on the rings of ${piston}.`,
  ringsOf: ({ piston, rings }: { readonly piston: string; readonly rings: string }) =>
    `${rings} of ${piston}`,
  itIs: ({ part }: { readonly part: string }) => `It is here: ${part}.`,
  found: ({ part }: { readonly part: string }): RichText => ['Yes: ', { strong: part }, '.'],
  both: (places: readonly string[]) => places.join(' and '),
  capOf: ({ id }: { readonly id: string }) => `cap of ${id}`,
  what: 'What is wrong with it?',
  kinds: {
    'missed-pull': 'A pull is missing',
    'shells-swapped': 'Its shell belongs elsewhere',
    'bead-over-passage': 'The bead lies over an oil way',
    'cap-turned': 'The cap is turned round',
    'gaps-in-line': 'Its gap is in line with its neighbour’s',
  },
  notThat: 'That is in order here.',
  cap: ({ id, to }: { readonly id: string; readonly to: 'nose' | 'drive' }) =>
    `Cap of ${id}: its arrow points to the ${to === 'nose' ? 'nose' : 'drive end'}`,
  seen: {
    'missed-pull': (of: {
      readonly number: string
      readonly procedure: string
      readonly pass: number
      readonly pulled: number
    }) =>
      `On the drawing the ring of ${of.number} is not full. On the sheet, ${of.procedure}, pass ${of.pass} has ` +
      `${counted(of.pulled - 1, 'fastener', 'fasteners')} instead of ${of.pulled}.`,
    'shells-swapped': (of: {
      readonly shells: readonly {
        readonly place: string
        readonly grade: string
        readonly wanted: string
      }[]
    }) =>
      of.shells.map((each) => `${each.place} has ${each.grade}; its marks want ${each.wanted}.`).join(' ') +
      ' The grades stand on drawing and sheet, the marks on the sheet alone.',
    'bead-over-passage': ({ bead, passage }: { readonly bead: string; readonly passage: string }) =>
      `On the drawing ${bead} runs over ${passage}. The sheet only says when it was laid.`,
    'gaps-in-line': (of: { readonly piston: string; readonly rings: string; readonly least: string }) =>
      `On the clock of ${of.piston} the gaps of ${of.rings} stand in line; at least ${of.least} is wanted between neighbours. The sheet has ` +
      'the same angle for both.',
    'cap-turned': ({ id }: { readonly id: string }) =>
      `On the drawing the arrow of ${id} points to the drive end and lies on the other side. The sheet does not show it.`,
  },
  leaves: (of: { readonly place: string; readonly clearance: string; readonly allowed: string }) =>
    `${of.place} is left with ${of.clearance}; ${of.allowed} is allowed.`,
  does: {
    'missed-pull':
      'It was not brought up with its neighbours, and they carry its load. The joint closes unevenly there, frets and leaks, and the bolt may work loose.',
    'shells-swapped':
      'Of two bearings one comes out tighter and one looser than it should. The tight one runs hot; the loose one lets oil away from the others and knocks.',
    'bead-over-passage':
      'Closing the joint presses sealant into the oil way. It narrows it, or comes off and blocks what lies behind it.',
    'cap-turned':
      'Cap and saddle were bored together and fit one way round only. Turned, their halves do not meet: the bore is no longer round, and the shell is pinched.',
    'gaps-in-line':
      'Gas that passes one gap goes straight on through the next. It blows past the piston and burns the oil off the bore; the engine loses compression and smokes.',
  },
}
