import type { RichText } from '../../rich.ts'
import { engineParts } from '../engine-parts.ts'
import { patterns } from '../window/parts.ts'

const toOrder = 'to order'
const halves = { ...engineParts.halves, ...engineParts.either }

/** The shells to order, and the labels of the tray. */
export const tray = {
  title: ({ number }: { readonly number: string }) => `Order and labels ${number}`,
  foot: ({ number }: { readonly number: string }) => `Bedplate order and labels ${number}`,
  orderCsv: 'Order list as CSV',
  labelsCsv: 'Labels as CSV',
  of: (facts: { readonly engine: string; readonly name: string; readonly serial: string }) =>
    `${facts.engine}, ${facts.name}${facts.serial ? `, serial number ${facts.serial}` : ''}.`,
  demo: 'DEMO: invented numbers. Never build a real engine from them.',
  labels: 'Tray labels',

  order: {
    title: 'Shells to order',
    of: (facts: {
      readonly fit: string
      readonly from: 'no-tray' | 'tray-lacks'
      readonly open: readonly string[]
    }) =>
      `${facts.fit}: ${
        facts.from === 'no-tray' ? 'no tray was counted, so all of them are listed' : 'what the tray lacks'
      }${facts.open.length > 0 ? `; still open: ${facts.open.join(', ')}` : ''}.`,
    nothing: 'Nothing has to be ordered.',
    fit: 'Fit',
    grade: 'Grade',
    size: 'Size',
    half: 'Half',
    count: 'Count',
    for: 'For',
    halves,
  },

  label: {
    half: ({ position, half }: { readonly position: string; readonly half: keyof typeof halves }) =>
      `${position} ${halves[half]}`,
    grade: (facts: {
      readonly grade: string
      readonly pattern: keyof typeof patterns
      readonly undersize: string | null
    }): RichText => [
      'Grade ',
      { strong: facts.grade },
      `, ${patterns[facts.pattern]}${facts.undersize ? `, ${facts.undersize}` : ''}`,
    ],
    noClearance: 'clearance not calculated',
    /** The place in the tray; none for a shell that is still to come. */
    from: ({ place }: { readonly place: string | null }) => `from: ${place ?? toOrder}`,
    toOrder,
    build: ({ number, demo }: { readonly number: string; readonly demo: boolean }) =>
      `${number}${demo ? ' · DEMO' : ''}`,
  },
}
