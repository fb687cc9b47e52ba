/** What the window says before and around its pages. */
export const window = {
  openingRecord: 'Opening the record …',
  pageNotLoaded:
    'This page did not come from the host. See whether Bedplate still runs, then load the window again.',
}
