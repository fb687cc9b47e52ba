/** What the desktop host says outside its window: in menus, boxes and questions of the system. */
export const desktop = {
  menus: { file: 'File', edit: 'Edit', view: 'View' },

  /** What can happen to the page in the window; also in the log. */
  pageFaults: {
    gone: 'The page in the window ended.',
    hung: 'The page in the window no longer answered.',
    'not-loaded': 'The page in the window could not be loaded.',
    'no-bridge': 'The page in the window could not be connected to the program.',
    'no-graphics': 'The part of the program that draws on the screen ended.',
  },
  pageFaultAgain: ({ fault }: { readonly fault: string }) =>
    `${fault} It was loaded again once, and that did not help.`,
  confirmedIsKept: 'What was confirmed is on disk.',
  inBrowser: ({ address }: { readonly address: string }) =>
    `You can continue in a browser on this machine as long as this message is open, at ${address}`,
  addressCopied: 'The address is copied: paste it into a browser.',
  loadAgain: 'Load the page again',
  copyAddress: 'Copy the address',
  end: 'End Bedplate',

  serial: {
    which: 'Which line is the instrument on?',
    none: 'No serial line is there. Plug the instrument in, then connect it again.',
    others: 'Others …',
    cancel: 'Cancel',
  },

  saving: {
    isThere: ({ name }: { readonly name: string }) => `${name} is there already. Replace it?`,
    otherName: 'Choose another name',
    replace: 'Replace',
    // Kinds of files
    pdf: 'PDF',
    table: 'Table (CSV)',
    drawing: 'Drawing (SVG)',
    spec: 'Engine spec',
    exported: 'Exported build',
    /** What a file is called whose name no disk takes. */
    nameless: 'build sheet',
    /** For names that Windows keeps for devices. */
    notDevice: ({ name }: { readonly name: string }) => `file ${name}`,
  },
}
