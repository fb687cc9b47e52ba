import { capital, type Split } from '../../formats/index.ts'
import { namesOf } from '../halves.ts'

/** Counting the shells that are on the shelf. */
export const trayForm = {
  heading: 'the tray',
  choose: 'Choose from this tray',
  count: 'Count what is on the shelf; leave a grade empty where there is none.',
  /** Whether the shells of the two halves are the same part. */
  bothAre: ({ split }: { readonly split: Split }) => {
    const [first, second] = namesOf(split)
    return `${capital(first)} and ${second} are`
  },
  halves: { alike: 'the same part', differ: 'different' },
  shellsOf: ({ label }: { readonly label: string }) => `Shells of ${label}`,
  wall: ({ unit }: { readonly unit: string }) => `Wall, ${unit}`,
  /** From which wall on a used shell may go back; `undersize` is null for the standard size. */
  worn: ({ undersize, wall }: { readonly undersize: string | null; readonly wall: string }) =>
    `A used shell${undersize === null ? '' : ` for ${undersize}`} may go back from a wall of ${wall} on. Measure it at the crown.`,
  takeAway: ({ label }: { readonly label: string }) => `Take ${label} away`,
  addSingle: 'A single shell with a measured wall',
  back: '← Back to the shells',
  withoutTray: 'Choose without a tray',
}
