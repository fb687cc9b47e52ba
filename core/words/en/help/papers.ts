import { say, type TopicsOf } from '../../help/help-words.ts'

/** The end of a build, and what is printed, kept and found again. */
export const papers: TopicsOf<'papers'> = {
  finish: {
    title: 'Finishing a build',
    whatFor: 'Once every step is done and every flag is answered, the build is signed off.',
    how: [
      (shown) => say`Press ${shown.steps.finish.lookAtSheet}, and read it through.`,
      (shown) => say`Press ${shown.steps.finish.finish}. Afterwards its work cannot be changed.`,
      'Print the sheet, or save it as PDF.',
      (shown) => say`What turns up later is added by ${shown.steps.afterwards.amend}.`,
    ],
    troubles: [
      {
        when: 'A step is open again.',
        then: 'Something under it was undone or changed. Do that step again.',
      },
      {
        when: 'The build should not count.',
        then: (shown) => say`Press ${shown.steps.afterwards.void} and say why. What was recorded stays.`,
      },
    ],
  },
  sheet: {
    title: 'The build sheet',
    whatFor: 'All that was done in a build, on paper: results first, then each pull with time and name.',
    how: [
      (shown) => say`Press ${shown.buildWindow.sheet} at any time; what is not done is missing there.`,
      (shown) => say`Choose A4 or Letter, then ${shown.sheet.page.print} or ${shown.sheet.page.saveAsPdf}.`,
      'Keep the sheet, or its head code, away from this computer: it proves that the entries are the same later.',
    ],
    troubles: [
      {
        when: 'Each page says that it is not as confirmed.',
        then: (shown) =>
          say`The record was altered. Find out where under ${shown.engines.record}; do not hand the sheet out.`,
      },
      {
        when: 'The PDF is not there.',
        then: 'The line below the buttons says where it was saved, and why it was not.',
      },
    ],
  },
  'order-and-labels': {
    title: (shown) => shown.shells.orderAndLabels,
    whatFor: 'What has to be ordered for this build, and a label for each shell in the tray.',
    how: [
      'Print the page, and cut the labels along their lines.',
      'Put each shell on its label as it comes.',
      (shown) => say`${shown.tray.orderCsv} and ${shown.tray.labelsCsv} make files for a spreadsheet.`,
    ],
    troubles: [
      {
        when: 'A shell is listed that lies on the shelf.',
        then: (shown) => say`Count the tray: ${shown.shells.countTray} in the step that chooses shells.`,
      },
    ],
  },
  'bench-card': {
    title: (shown) => shown.run.benchCard,
    whatFor: 'A procedure, or the gaps of the rings, on one sheet of paper, for a bench without a screen.',
    how: [
      (shown) => say`Press ${shown.run.benchCard} in the step of the procedure, or ${shown.rings.card.open}.`,
      'Print it, and write serial number, name, date and wrench on it.',
      'Tick each fastener as it is done, pass by pass.',
      'Enter the pulls in the build afterwards: the card is no record.',
    ],
    troubles: [
      {
        when: 'The spec has a newer revision than the card.',
        then: 'Throw the card away and print another one.',
      },
    ],
  },
  'clamp-map': {
    title: (shown) => shown.run.clampMap,
    whatFor: 'How fasteners take load from each other while they are pulled, in two orders side by side.',
    how: [
      (shown) => say`Press ${shown.run.clampMap} in the step of a procedure.`,
      'Choose the two orders, and what is between the faces.',
      'Move the slider pull by pull, and look where the joint opens.',
      'Read the table for the loads in figures.',
    ],
    troubles: [
      {
        when: 'The loads do not agree with the manual.',
        then: 'It is a teaching model, not a calculation of this joint. Its assumptions stand at the foot of the page.',
      },
    ],
  },
  archive: {
    title: (shown) => shown.archive.title,
    whatFor: 'Every build of this bench: to find, export, import, verify and compare.',
    how: [
      'Type words: engine, serial number, person, part.',
      'Tick a build to export or verify it, two of one engine to compare them.',
      (shown) => say`${shown.archive.exportOne} makes the file for another bench.`,
      'Drop such a file on the page to import it.',
      'Tap a build to open it.',
    ],
    troubles: [
      {
        when: 'A file is refused.',
        then: 'A byte of it was changed, or its entries break a rule. Ask for it again; the reason stands there.',
      },
      {
        when: 'The same build was continued on two benches.',
        then: 'Nothing is mixed. Find out which of the two was done on the engine, and void the other one.',
      },
    ],
  },
  comparison: {
    title: (shown) => shown.archive.compared.title,
    whatFor: 'Two builds of one engine side by side: marks, shells, checks, pulls.',
    how: [
      (shown) =>
        say`In ${shown.archive.title} tick two builds of one engine, and press ${shown.archive.compareTwo}.`,
      'At first only what differs is shown; it can be changed to everything.',
      'Look at the revision of the spec at the head: where it differs, so may what was asked for.',
    ],
    troubles: [
      {
        when: 'Two builds cannot be compared.',
        then: 'They are of two engines.',
      },
    ],
  },
}
