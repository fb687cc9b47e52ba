import { counted, day } from '../formats.ts'

export interface OfCheck {
  readonly by: string
  readonly on: string
}

/** The second-person check: each value of a spec beside its page. */
export const editorCheck = {
  title: 'Compare with the manual',
  explained:
    'Compare each value with the manual at its page. Torques, angles and orders are typed as the manual prints them, without seeing what was entered.',
  ofDemo: 'The numbers of a demo are invented: there is no manual to compare them with.',
  byAnother: ({ person }: { readonly person: string }) =>
    `${person} entered the numbers and cannot check them. Another person chooses their name here and goes on.`,
  progress: ({ done, of }: { readonly done: number; readonly of: number }) =>
    `${done} of ${counted(of, 'value', 'values')} found the same.`,
  checked: ({ by }: { readonly by: string }) => `Checked by ${by}.`,
  page: ({ page, document }: { readonly page: string; readonly document: string }) =>
    `Page ${page}, ${document}`,
  noPage: 'No page is given: it can be typed beside the part that this value belongs to.',
  same: 'Same',
  other: 'Other',
  later: 'Later',
  whatItSays: 'What the manual says',
  typeUnseen: ({ unit }: { readonly unit: string }) => `What the manual prints, in ${unit} or with its unit`,
  typeOrder: 'The fasteners in the order of the manual, by their numbers',
  enter: 'Compare it',
  note: 'Note it as other',
  differs:
    'This is not what was entered. Look at the page again: mistyped, type it again; if the manual says so, note it.',
  noteOther: ({ found }: { readonly found: string }) => `The manual says “${found}”`,
  all: 'All values',
  open: 'not compared yet',
  sameBy: ({ by, on }: OfCheck) => `the same, ${by}, ${day(on)}`,
  otherBy: ({ by, on, found }: OfCheck & { readonly found: string }) => `other, ${by}, ${day(on)}: ${found}`,
  compare: 'Compare',
  again: 'Compare again',
  noDemoAnyMore: 'Every value was replaced: it is no copy of a demo any more',
}
