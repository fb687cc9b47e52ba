import { say, type TopicsOf } from '../../help/help-words.ts'

/** What belongs to the bench: people, tools, settings, the record, practice. */
export const bench: TopicsOf<'bench'> = {
  people: {
    title: (shown) => shown.people.title,
    whatFor: 'Who works here. The name at the bench stands on every entry.',
    how: [
      'Add each person with the name as it goes on the sheet, and the role.',
      'Give a PIN, so that nobody enters anything under somebody else’s name.',
      (shown) => say`Press ${shown.people.form.teachBadge} and present a badge whose reader types.`,
      'In a build, tap the name in the title block to change who is at the bench.',
    ],
    troubles: [
      {
        when: 'The list cannot be changed.',
        then: 'A mechanic with a PIN has to be chosen as the one who changes it.',
      },
      {
        when: 'A badge is taken for a reading.',
        then: 'It types a number. Tap the name first, then present the badge.',
      },
    ],
  },
  'second-person': {
    title: 'Second person',
    whatFor:
      'In an apprentice’s build chosen steps wait until a mechanic has looked at them; steps that the engine spec holds wait in every build.',
    how: [
      'The mechanic goes to the engine and looks at what the panel lists.',
      'He or she chooses the own name, and types the PIN or presents the badge.',
      'Then confirms, or sends the step back with a reason.',
    ],
    troubles: [
      {
        when: 'A name cannot be chosen.',
        then: 'That person worked on this step. Somebody else has to look.',
      },
      {
        when: 'The step was sent back.',
        then: (shown) => say`Read the reason, press ${shown.people.second.again}, and put it right.`,
      },
      {
        when: 'A step waits though nobody here is an apprentice.',
        then: 'The engine spec holds this step in every build. A mechanic of the list who did not work on it looks at it.',
      },
    ],
  },
  library: {
    title: (shown) => shown.library.title,
    whatFor: 'The engine specs of this shop: who entered and checked each, and which builds rest on it.',
    how: [
      (shown) => say`Press ${shown.library.begin.title} to begin one from a family and a few measures.`,
      (shown) => say`Or choose an engine and press ${shown.library.copy}: then replace every value.`,
      (shown) => say`${shown.library.drafts.show} names what is missing or wrong, each with its place.`,
      (shown) =>
        say`${shown.library.drafts.publish} puts it where builds can begin from it. It is never changed afterwards.`,
      (shown) =>
        say`${shown.library.save} makes a file for another shop; drop such a file on the page to take it in.`,
    ],
    troubles: [
      {
        when: 'A draft cannot be published.',
        then: 'The audit finds a fault in it. Mend what it says first.',
      },
      {
        when: 'A published value is wrong.',
        then: (shown) =>
          say`Choose the engine and press ${shown.library.revise}. Builds that have begun keep the revision they have.`,
      },
      {
        when: 'A build goes by a revision that has a newer one.',
        then: (shown) =>
          say`Its window says so: ${shown.revision.look} shows what differs, and what is open again if it is taken over.`,
      },
      {
        when: 'A draft was discarded by mistake.',
        then: (shown) => say`Press ${shown.library.drafts.bringBack} at the head of the page.`,
      },
    ],
  },
  editor: {
    title: 'Writing an engine spec',
    whatFor:
      'An engine is entered from its manual: drawn, then its fasteners, passes, bearings, steps and parts. Every edit is on disk at once.',
    how: [
      (shown) =>
        say`Place what holds the parts together on the drawing, then ${shown.editor.actions.order}: tap the manual’s order.`,
      (shown) =>
        say`${shown.editor.actions.picture} puts the manual’s own drawing, or a photo, under the drawing, placed by two known points. It stays on this bench.`,
      (shown) =>
        say`Go through ${shown.editor.sections.groups}, ${shown.editor.sections.passes}, ${shown.editor.sections.fits}, ${shown.editor.sections.steps} and ${shown.editor.sections.parts}. Type each value as the manual prints it, in both units where it prints both: 30 lbf·ft (41 N·m).`,
      (shown) =>
        say`Say the ${shown.editor.pages.page} of each part: it stands beside its values when they are compared.`,
      (shown) =>
        say`Under ${shown.editor.sections.audit} mend each fault. A doubt that is right as it is: ${shown.editor.audit.accept}`,
      (shown) =>
        say`Let a second person choose the own name and go through ${shown.editor.sections.check}. A value that changes is compared again.`,
      'Ctrl+Z takes back what is being typed in a field, else the last edit, also after the program was closed. Tab goes from field to field, Enter enters.',
    ],
    troubles: [
      {
        when: 'A value is not taken.',
        then: 'The line below the field says why. What was typed stays there; nothing was changed.',
      },
      {
        when: 'A step cannot be taken out.',
        then: 'A part goes in at it, or a caution stands beside it alone. Change that first.',
      },
      {
        when: 'An accepted doubt is there again.',
        then: 'What it is about has changed. Look into it once more.',
      },
    ],
  },
  wrenches: {
    title: (shown) => shown.wrenches.title,
    whatFor: 'The torque wrenches of the shop. For each pull one that can do it is chosen.',
    how: [
      (shown) => say`Press ${shown.wrenches.add}.`,
      'Type name and number, and the first and last mark of its scale.',
      'Type the day of its calibration, and type and class as marked on it.',
      'For adapters that move the fastener off the drive, type length of the wrench and offset.',
      (shown) => say`Press ${shown.wrenches.form.keep}.`,
    ],
    troubles: [
      {
        when: 'No wrench fits a pull.',
        then: (shown) =>
          say`${shown.run.wrench.offer} in the step says why each cannot be used: range, marks, class or adapter.`,
      },
      {
        when: 'The wrench is set to another value than the fastener has.',
        then: 'That is right with an adapter: the panel says what to set. Keep the adapter at the angle it says.',
      },
    ],
  },
  instruments: {
    title: (shown) => shown.instruments.title,
    whatFor: 'Gauges and wrenches that send their readings, and prompts that are said aloud.',
    how: [
      'A gauge that types like a keyboard needs no setting: press its button while a reading is asked for.',
      (shown) =>
        say`For one on a serial line press ${shown.instruments.add}, and copy its settings from its manual.`,
      (shown) => say`Press ${shown.instruments.connect} and choose its line.`,
      'Send a reading, and compare it with the display.',
      'Switch the voice on, and choose how fast it speaks.',
    ],
    troubles: [
      {
        when: 'What comes is no reading.',
        then: 'Compare speed, data bits, parity and stop bits with the manual of the instrument.',
      },
      {
        when: 'A reading came while none was asked for.',
        then: (shown) => say`It is kept in the panel: ${shown.run.unasked.use} or ${shown.run.unasked.drop}.`,
      },
    ],
  },
  'screen-and-keys': {
    title: (shown) => shown.settings.title,
    whatFor: 'Numbers in their true size on this screen, and the keys.',
    how: [
      'Hold a bank card to the outline, and make the outline as large.',
      (shown) => say`Press ${shown.settings.asLargeAsCard}.`,
      (shown) => say`On the first page choose ${shown.settings.readFrom}: half a metre, one or two.`,
      (shown) => say`Switch ${shown.settings.letterKeys} off where somebody presses them by mistake.`,
    ],
    troubles: [
      {
        when: 'Numbers are too small or too large.',
        then: 'Measure the screen again; zoom of the browser counts, so set it to 100 % first.',
      },
      {
        when: 'A key does nothing.',
        then: 'While a text is typed, keys belong to the text. Press Escape first.',
      },
    ],
  },
  record: {
    title: (shown) => shown.engines.record,
    whatFor: 'Whether all entries are as they were confirmed, and copies of them.',
    how: [
      (shown) => say`Choose a second folder on another disk, and press ${shown.record.backup.keepThere}.`,
      (shown) => say`${shown.record.backup.make} makes a copy at once; each day one is made by itself.`,
      (shown) => say`${shown.record.verify.whole} checks every entry.`,
      'Type the head code of an old sheet to see whether the record still agrees with it.',
      (shown) => say`Read ${shown.record.doctor} to whoever helps by telephone.`,
    ],
    troubles: [
      {
        when: 'Something is not as confirmed.',
        then: 'The page says which entry. Keep the record as it is, and compare with a backup or a sheet.',
      },
      {
        when: 'A backup is to be put in place.',
        then: 'Choose it and restore it. What was there before is kept beside it.',
      },
    ],
  },
  shop: {
    title: (shown) => shown.shop.title,
    whatFor:
      'Several benches that share an archive: each finds, reads and prints every build, and one at a time works on it.',
    how: [
      (shown) =>
        say`Give the bench a name, type the address of the archive, and press ${shown.shop.join.join}.`,
      'Go on as before: what is confirmed is on this bench first, and goes to the archive by itself.',
      (shown) => say`${shown.shop.build.handOver}, in the window of a build, gives it to another bench.`,
      (shown) =>
        say`${shown.shop.build.takeOver} goes on with one whose bench is dark; it asks for a reason.`,
      (shown) =>
        say`${shown.archive.title} finds the builds of all benches, by ${shown.shop.bench} too; ${shown.archive.search.states.forked} are those to settle.`,
      (shown) => say`${shown.shop.wall.open} shows each open build in letters that are read from 3 m.`,
    ],
    troubles: [
      {
        when: 'The network is down.',
        then: 'Work on. What waits is counted on the page and sent when the archive answers again.',
      },
      {
        when: 'A build was continued at two benches apart.',
        then: (shown) =>
          say`Find out which of the two was done on the engine. At either bench open the build, press ${shown.shop.apart.look} and say which one counts.`,
      },
    ],
  },
  'damaged-record': {
    title: 'When the record is damaged',
    whatFor: 'The program does not build on a record that it cannot trust. Nothing is thrown away.',
    how: [
      'Read what is wrong at the head of the page. Do not delete any file.',
      (shown) => say`Plug in a missing disk or share, and press ${shown.record.rescue.lookAgain}.`,
      'Else choose the newest backup that was checked, and restore it.',
      'Compare the last build with its sheet: what was confirmed after the backup has to be entered again.',
    ],
    troubles: [
      {
        when: 'There is no backup.',
        then: 'Look in the second folder and on other disks for one. Copy the whole data folder before anything is tried.',
      },
      {
        when: 'The record disappeared while the program ran.',
        then: (shown) =>
          say`It is still in memory: press ${shown.record.rescue.write} before the program is closed.`,
      },
    ],
  },
  practice: {
    title: (shown) => shown.practice.title,
    whatFor: 'Drills on the engines of the library, away from any build, about ten minutes a day.',
    how: [
      'Choose who is at the bench, so that progress is kept.',
      (shown) => say`Begin with ${shown.practice.today}: each drill comes again when it is due.`,
      'Errors are shown at their places on the drawing.',
      (shown) =>
        say`${shown.practice.dryRun.name} is a whole build on the real screens. Nothing of it is recorded.`,
    ],
    troubles: [
      {
        when: 'Nothing is kept.',
        then: (shown) => say`The name at the bench is not under ${shown.engines.people}.`,
      },
    ],
  },
}
