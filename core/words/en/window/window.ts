/** What the window says before and around its pages. */
export const window = {
  skip: 'Skip to what this page is about',
  /** Said of the ‘?’ that opens it. */
  help: 'Help',
  openingRecord: 'Opening the record …',
  pageNotLoaded:
    'This page could not be loaded. Check that Bedplate is still running, then reload the window.',
}
