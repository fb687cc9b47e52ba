import { say, type TopicsOf } from '../../help/help-words.ts'

/** The first page, and what is the same in every step. */
export const start: TopicsOf<'start'> = {
  engines: {
    title: (shown) => shown.parts.enginesAndBuilds,
    whatFor: 'The first page: builds to go on with, engines to start from, and the ways to all other pages.',
    how: [
      (shown) =>
        say`Tap a build under ${shown.engines.onTheBench} to go on with it. It opens where it was left.`,
      (shown) => say`Tap an engine under ${shown.engines.startOn} to begin a new build.`,
      (shown) => say`Builds that are finished or long ago are found under ${shown.archive.title}.`,
      'Language, colours, unit of torque and reading distance are set at the head of the page.',
    ],
    troubles: [
      {
        when: (shown) => say`An engine says ${shown.engines.cannotBeBuilt}`,
        then: 'Its spec file has a fault. The line says what and where; mend the file and start the program again.',
      },
      {
        when: 'The engine is not in the list.',
        then: (shown) =>
          say`Enter it from its manual under ${shown.library.title}, or open a spec file of it there.`,
      },
      {
        when: 'The window is in another language.',
        then: 'Choose it at the head of this page. It changes at once; what was typed stays as it was typed.',
      },
    ],
  },
  'guided-build': {
    title: 'Guided first build',
    whatFor:
      'A demo engine put together from its first step, with a short note beside each. It goes into the record, marked as a demo.',
    how: [
      (shown) =>
        say`Press ${shown.engines.sample.beginGuided}, here or on the first page as long as no build has been begun.`,
      'No engine is needed: do each step on the screen, with marks and readings that the panel allows.',
      'Read the note under the drawing. It can be put away until the next step, or open this help at its topic.',
      'Leave the guide in the note at any time; the build goes on without notes.',
    ],
    troubles: [
      {
        when: 'The notes are gone.',
        then: 'They stand at the build that was guided last. Begin another one here; the earlier build stays in the record and can be made void.',
      },
    ],
  },
  'start-build': {
    title: 'Starting a build',
    whatFor: 'A build is one engine that is put together. All that is confirmed in it goes into its record.',
    how: [
      (shown) =>
        say`Tap the engine under ${shown.engines.startOn}, and compare its revision with the manual.`,
      (shown) => say`Type ${shown.engines.buildName}: what the shop calls the job.`,
      (shown) => say`Type the serial number as it is stamped, and ${shown.engines.person}.`,
      (shown) => say`Tick ${shown.engines.apprentice} where somebody else is to look at chosen steps.`,
      (shown) => say`Press ${shown.engines.start}.`,
    ],
    troubles: [
      {
        when: (shown) => say`There is a line ${shown.engines.doubtful}`,
        then: 'The spec can be built, but something in it looks wrong. Compare that place with the manual first.',
      },
      {
        when: 'It is a demo engine.',
        then: 'Its numbers are invented. Never build a real engine from one.',
      },
    ],
  },
  'build-window': {
    title: 'The build window',
    whatFor:
      'One step at a time: the drawing at the left, what to do at the right, one big button to confirm.',
    how: [
      'Read the panel at the right from the top: what can hurt comes first.',
      'Do the work at the engine. Then press the big button, Enter, Space or a foot pedal.',
      'The next step comes by itself once a step is done.',
      (shown) =>
        say`${shown.buildWindow.allSteps} shows every step; tap one to look at it, or to do it again.`,
      'The name in the title block says who is at the bench. Tap it when somebody else goes on.',
      (shown) => say`${shown.buildWindow.benchView} shows only what is next, large enough for some metres.`,
    ],
    troubles: [
      {
        when: 'The big button is grey.',
        then: 'The panel says which steps come first, or why the build can only be read.',
      },
      {
        when: 'Something was confirmed by mistake.',
        then: 'Go to its step. There it can be taken back with a reason; the record keeps both.',
      },
    ],
  },
  'again-and-skip': {
    title: 'Doing a step again, and skipping one',
    whatFor:
      'A step that is done is opened once more, with all that stands on it; a step is left out, with its reason.',
    how: [
      (shown) => say`Open ${shown.buildWindow.allSteps}, tap the step, and press ${shown.plan.doAgain}`,
      'Read which steps are open again with it, and undo at the engine what the list says, in its order.',
      (shown) =>
        say`Tick ${shown.plan.isUndone} where it is asked, say why, and press ${shown.plan.againNow}.`,
      (shown) => say`To leave a step out, press ${shown.plan.skip}, say why, and press ${shown.plan.skipIt}.`,
      (shown) => say`${shown.plan.takeBackSkip} takes that back.`,
    ],
    troubles: [
      {
        when: 'A step cannot be skipped.',
        then: 'Its engine spec does not let it be left out. It has to be done.',
      },
      {
        when: 'Only a mark was read wrongly.',
        then: 'Do the step of the marks again. What stands on them stays done, unless a mark reads otherwise.',
      },
      {
        when: 'The build is finished.',
        then: (shown) =>
          say`Its work cannot be changed any more. Say what was done later under ${shown.steps.afterwards.amend}.`,
      },
    ],
  },
  drawing: {
    title: (shown) => shown.buildWindow.drawing,
    whatFor:
      'The joint face as it lies on the bench, with what is next in blue. Places are true, not every distance.',
    how: [
      'Look for the nose on the drawing, and compare it with the engine before anything else.',
      (shown) =>
        say`${shown.view.flip} shows the face from the other side, ${shown.view.turn} turns it by a quarter.`,
      (shown) => say`Under ${shown.view.open} say how the engine lies on the bench, and show more or less.`,
      'Tap anything to read what it is. A card opens beside it.',
      'Zoom with + and −, by wheel or two fingers; Home shows all of it.',
      (shown) => say`${shown.view.inWords} lists the same things, for keys and screen readers.`,
    ],
    troubles: [
      {
        when: 'The drawing and the engine do not agree.',
        then: 'Do not go on. Flip or turn it until nose and numbers agree; if they never do, it is another engine or another spec.',
      },
    ],
  },
  interrupted: {
    title: 'After an interruption',
    whatFor:
      'What the window shows as done is on disk. After a call or a power cut work goes on at the same place.',
    how: [
      'Open the program. It goes back to the build that lay open.',
      'Read the big button: it names the next thing.',
      'Look at the last fastener that was confirmed, at the engine too.',
      'If it is not sure that it was pulled, take the last pull back with that reason and pull it again.',
    ],
    troubles: [
      {
        when: 'Nobody knows how far an angle was turned.',
        then: 'Do not guess. Loosen that fastener and begin it again from its first pass, as the panel leads.',
      },
      {
        when: 'Sealant was laid before the interruption.',
        then: 'Its clock went on. Once the open time is over, take the joint apart, clean it and lay a new bead.',
      },
    ],
  },
}
