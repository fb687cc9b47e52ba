import { say, type TopicsOf } from '../../help/help-words.ts'

/** Steps that choose, measure and fit. */
export const steps: TopicsOf<'steps'> = {
  marks: {
    title: 'Reading size marks',
    whatFor:
      'The marks on case, crank and rods say which size each bore and journal has. The shells follow from them.',
    how: [
      'Wipe the marks clean, and find the nose.',
      'Read them from the nose to the drive end, as they are stamped.',
      'Type them one after another, with or without blanks between them.',
      'Type ? for a mark that is worn away.',
      (shown) => say`Compare the list with the engine once more, and press ${shown.steps.marks.note}.`,
    ],
    troubles: [
      {
        when: 'A mark is refused.',
        then: 'This engine has no such mark. Look again, with better light; letters and figures are easily mixed up.',
      },
      {
        when: 'A mark cannot be read.',
        then: 'Leave it worn away, and measure that bore or journal when the shells are chosen.',
      },
    ],
  },
  shells: {
    title: 'Choosing shells',
    whatFor: 'A shell for each half of each bearing, with the oil clearance that it gives.',
    how: [
      'Look at each bearing in the list: marks, shells, clearance.',
      'Tap a bearing to see why these shells are proposed, and which other pairs are allowed.',
      (shown) =>
        say`${shown.shells.countTray} chooses among the shells that are there, over all bearings at once.`,
      (shown) => say`${shown.shells.orderAndLabels} prints what is to be ordered, and labels.`,
      (shown) => say`Press ${shown.shells.take} once every bearing has a pair within its limits.`,
    ],
    troubles: [
      {
        when: 'No shell is proposed.',
        then: 'A mark or a reading is missing, or nothing in the spec fits. Tap the bearing: it says which, and what to measure.',
      },
      {
        when: 'Mark and reading differ.',
        then: 'Measure once more. Then decide which of the two counts; the reason goes on the sheet.',
      },
      {
        when: 'The crank was ground.',
        then: 'Declare the undersize at the journal, and measure it: shells of another undersize seize or knock.',
      },
    ],
  },
  measuring: {
    title: 'Measuring bores and journals',
    whatFor: 'A size off a gauge, where a mark is worn, the crank was ground or the case is not new.',
    how: [
      (shown) =>
        say`Choose ${shown.shells.measuring.parts.housing} or ${shown.shells.measuring.parts.journal}.`,
      'Tighten the cap first, without shells, as the manual says, before a bore is measured.',
      'Read at each plane and direction of the picture, and type the reading or send it from the gauge.',
      'Say how warm part and gauge are, and how far the gauge may be off, where that is known.',
      (shown) => say`Press ${shown.shells.measuring.noteReadings}.`,
    ],
    troubles: [
      {
        when: 'One reading is far from the others.',
        then: 'The program points at it. Clean the place, and measure it again.',
      },
      {
        when: 'It is out of round or tapered.',
        then: 'No shell makes that good. Follow the manual: grind, bore, or another part.',
      },
    ],
  },
  'fit-shells': {
    title: 'Fitting shells',
    whatFor: 'Each shell goes into its own half; the drawing ticks them off one by one.',
    how: [
      'Take the shell that the panel names. Compare letter, colour and size on its back.',
      'Wipe its back and the bore clean and dry.',
      (shown) => say`Press it in with the thumbs. ${shown.steps.fitShells.seating}`,
      'Press the big button for this half, then take the next one.',
    ],
    troubles: [
      {
        when: 'The oil hole is not over the oil passage.',
        then: 'It is the wrong half, or it lies the wrong way round. A covered hole starves the bearing.',
      },
      {
        when: 'A shell went into the wrong half.',
        then: 'Tap that half and take it out; the reason is recorded.',
      },
    ],
  },
  'fit-part': {
    title: 'Fitting a part',
    whatFor: 'One part that goes in, such as the crank, a seal or the other half of the case.',
    how: [
      'Read the cautions above the work.',
      'Do what the step says, by hand or with the hoist.',
      (shown) => say`Say under ${shown.partsList.title} whether its parts are new or used again.`,
      (shown) => say`Press ${shown.steps.fitPart.isIn}.`,
    ],
    troubles: [
      {
        when: 'It has to come out again.',
        then: (shown) =>
          say`Press ${shown.steps.fitPart.takeOutAgain} and say why. What was built on it is to be undone first.`,
      },
      {
        when: 'The spec wants a new part, and there is none.',
        then: 'Wait for it. A single-use part that is used again stands on the sheet with its reason.',
      },
    ],
  },
  placed: {
    title: 'Work done place by place',
    whatFor:
      'Oiling, cleaning, turning parts the right way, setting marks, putting parts in: one place after another.',
    how: [
      'The drawing and the picture show the place that is next.',
      'Do the work there, and only there.',
      'Look at it once more, then press the big button.',
      (shown) => say`${shown.placed.places} shows what is done and what is left.`,
    ],
    troubles: [
      {
        when: 'A place was confirmed and not done.',
        then: (shown) => say`Press ${shown.placed.undo}, choose the place, and do it again.`,
      },
      {
        when: 'The part lies the other way.',
        then: 'Take it out and turn it. A piston, a cap or a seal that lies the wrong way is not found later.',
      },
    ],
  },
  bead: {
    title: 'Laying a bead of sealant',
    whatFor: 'Sealant along its path on the joint face, and the clock of its open time.',
    how: [
      'Put everything for closing the joint within reach first.',
      'Clean both faces, and let them dry.',
      'Lay the bead along the path of the drawing, no wider than asked, round the holes as drawn.',
      (shown) => say`Press ${shown.steps.bead.laid} as soon as it lies.`,
      'Close the joint and tighten it before the clock has run down.',
    ],
    troubles: [
      {
        when: 'Sealant got into an oil way.',
        then: 'Wipe all of it off and begin again. It starves a bearing.',
      },
      {
        when: 'The open time is over.',
        then: (shown) =>
          say`Take the joint apart, clean it, and press ${shown.steps.bead.wipeOff}. Then lay a new bead.`,
      },
    ],
  },
  check: {
    title: 'Checks',
    whatFor: 'A question that is answered at the engine, with a reading where one is asked for.',
    how: [
      'Do the check as the step says.',
      'Type the reading with the gauge still in place, or send it from the gauge.',
      (shown) => say`Press ${shown.steps.check.isGood}, or ${shown.steps.check.noteReading}.`,
    ],
    troubles: [
      {
        when: 'It is not good.',
        then: (shown) =>
          say`Press ${shown.steps.check.isNotGood} and say what is wrong. Put it right, say what was done, and answer again.`,
      },
      {
        when: 'End float is out of its limits.',
        then: 'The panel says which thrust washers fit, where the spec has a table of them.',
      },
    ],
  },
  limits: {
    title: 'Measuring against limits',
    whatFor: 'Sizes that must lie within the limits of the manual: for new parts, and for parts used again.',
    how: [
      'Look at the picture: it shows where the gauge goes.',
      'Measure the place that is next, and type the reading or send it.',
      (shown) => say`Press ${shown.limits.note}.`,
      (shown) => say`${shown.limits.places} shows every reading, and what it lacks.`,
    ],
    troubles: [
      {
        when: 'A reading is outside its limits.',
        then: (shown) =>
          say`Measure again first. Then put in another part and press ${shown.limits.replace}; ${shown.limits.accept} is for what the manual allows.`,
      },
    ],
  },
  rings: {
    title: 'Piston rings',
    whatFor: 'The end gap of each ring in its own bore, and where the gaps stand on the piston.',
    how: [
      'Push the ring into its bore with a piston, so that it lies square, and measure its gap.',
      'Keep ring and bore together from then on.',
      'Put the rings on in the order and with the side up that the panel says.',
      'Turn each gap to its place on the clock, looking at the crown with the nose side at the left.',
      (shown) => say`Press ${shown.rings.confirm}.`,
    ],
    troubles: [
      {
        when: 'A gap is too narrow.',
        then: 'File the ends square, or take another ring. A ring without a gap seizes, so it cannot be accepted.',
      },
      {
        when: 'Two gaps stand in line.',
        then: 'The program says so. Turn one of them: gas goes straight through gaps in line.',
      },
    ],
  },
  turning: {
    title: 'Turning the crank',
    whatFor: 'What the crank takes to turn tells whether a bearing binds, before the next part hides it.',
    how: [
      (shown) => say`${shown.turning.manualFirst}`,
      'Keep hands away from rods and counterweights.',
      (shown) =>
        say`Read it by ${shown.turning.byWrench} or ${shown.turning.byBalance}, and type what it shows.`,
      (shown) => say`Press ${shown.turning.note}; without limits, ${shown.turning.turnsFreely}.`,
    ],
    troubles: [
      {
        when: 'It takes too much, or binds at one place.',
        then: 'Loosen one cap after the other and turn each time. The one that frees it is looked at: shells, oil, number and direction of the cap.',
      },
      {
        when: 'It takes more after one cap than before.',
        then: 'Stop there. The cause is at that cap, not at the ones before.',
      },
    ],
  },
  photo: {
    title: 'Photos and notes',
    whatFor: 'A picture or a sentence of what cannot be seen any more once it is closed.',
    how: [
      (shown) => say`Press ${shown.photos.fromCamera} or ${shown.photos.fromFile}, or paste a picture.`,
      'Hold the camera so that the part fills the picture, in good light.',
      (shown) => say`Write a caption, and press ${shown.photos.add.add}.`,
      (shown) => say`${shown.photos.writeNote} adds a sentence instead.`,
    ],
    troubles: [
      {
        when: 'There is no camera.',
        then: (shown) =>
          say`Take the picture with a telephone and add the file, or press ${shown.photos.skip} and say why.`,
      },
      {
        when: 'The picture is not sharp.',
        then: 'Take another one before the part is covered. Both stay in the record.',
      },
      {
        when: 'A photo shows what it should not.',
        then: (shown) =>
          say`Tap it, press ${shown.photos.withdraw} and say why. It is then no longer shown, printed or exported; the reason stays on the sheet.`,
      },
    ],
  },
  count: {
    title: 'Counting parts',
    whatFor: 'Before the end every part of the list is in the engine, or it is said where it is.',
    how: [
      'Look into every tray and under the bench.',
      'Go through the parts that are not ticked. Those that are in are ticked here.',
      (shown) =>
        say`Of a part that is not in the engine, say where it is, and press ${shown.partsList.count.noteLeftOver}.`,
      (shown) => say`Press ${shown.partsList.count.done}.`,
    ],
    troubles: [
      {
        when: 'A part is left over and nobody knows why.',
        then: 'Do not finish. Find its step in the list, and look whether it is in the engine.',
      },
    ],
  },
}
