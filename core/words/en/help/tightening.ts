import { say, type TopicsOf } from '../../help/help-words.ts'

/** Tightening procedures. */
export const tightening: TopicsOf<'tightening'> = {
  run: {
    title: 'Tightening',
    whatFor: 'A procedure leads through its passes, fastener by fastener, in the order of the manual.',
    how: [
      'Set the wrench to the value that the panel says for this wrench.',
      'Find the fastener in blue on the drawing by its number, and put the wrench on it.',
      'Pull evenly until it clicks or the value is there; do not jerk, and do not click twice.',
      'Type the reading if the wrench shows one, then press the big button.',
      (shown) =>
        say`${shown.run.pause} keeps the place; ${shown.run.problem} notes what is wrong at a fastener.`,
      (shown) => say`${shown.run.explained.offer} shows what the value does to the bolt.`,
    ],
    troubles: [
      {
        when: 'The button was pressed and nothing was pulled.',
        then: 'Press Backspace, or tap the last pull, and take it back with a reason. Then pull it.',
      },
      {
        when: 'The next fastener cannot be reached.',
        then: 'Tap the one that can be pulled in this pass, and say why. The order goes on where it was.',
      },
      {
        when: 'A reading is outside its limits.',
        then: 'It is flagged. See ‘Flags and what to do’: never tighten it on by feel.',
      },
    ],
  },
  angle: {
    title: 'Turning by an angle',
    whatFor: 'After the torque a fastener is turned by an angle, so that friction matters less.',
    how: [
      'Mark the head, or put an angle gauge on. The drawing shows where the handle starts and where it comes to.',
      'Move the handle on the drawing to where yours starts: drag it, or press ← and →.',
      (shown) => say`Say under ${shown.run.angle.room} how far it can swing; the swings are then counted.`,
      'Turn in one go where there is room, without letting it come back.',
      'Type the angle that was reached, or press the big button.',
    ],
    troubles: [
      {
        when: 'It was turned too little.',
        then: 'What is left stays open and is asked for next. It is turned on from where it stands, never from the beginning.',
      },
      {
        when: 'It was turned too far.',
        then: 'The bolt may be past its yield point. Follow the panel: it is replaced, or begun again from its first pass.',
      },
      {
        when: 'Nobody knows how far it was turned.',
        then: 'Loosen it and begin it again; a used angle bolt that is once-only is replaced.',
      },
    ],
  },
  stretch: {
    title: 'Tightening to a stretch',
    whatFor: 'The length of the bolt before and after says how much it is loaded, whatever the friction.',
    how: [
      'Measure each bolt before it goes in, at the same spots, and type its length.',
      'Tighten it to the torque that the pass begins with.',
      'Measure again: the panel says by how much it has to be longer.',
      'Tighten on in small steps, and type each length, until it is long enough.',
    ],
    troubles: [
      {
        when: 'It is longer than the most.',
        then: 'It is replaced. Turning it back does not undo the stretch.',
      },
      {
        when: 'The lengths jump.',
        then: 'Clean the ends, let bolt and gauge come to the same temperature, and measure three times.',
      },
    ],
  },
  flags: {
    title: 'Flags and what to do',
    whatFor: 'What was outside its limits or noted as wrong stays flagged until somebody says what was done.',
    how: [
      'Read the flag: which fastener, in which pass, and what was read.',
      'Look at the fastener and its seat before anything is turned.',
      (shown) => say`A reading that was wrong is read again: ${shown.run.readAgain.offer}`,
      (shown) => say`Where the panel offers it, press ${shown.run.loosen.offer}`,
      (shown) => say`Do what was decided, and type it under ${shown.run.flag.whatWasDone}`,
      (shown) => say`Press ${shown.run.flag.note}.`,
    ],
    troubles: [
      {
        when: 'It went past its upper limit.',
        then: 'No words make that good. It is replaced, begun again, or turned on, as the panel offers.',
      },
      {
        when: 'There is no time for it now.',
        then: 'It can be answered later. The procedure stays open until then.',
      },
    ],
  },
  'own-order': {
    title: (shown) => shown.order.own.title,
    whatFor: 'Another order than the maker’s, for once, with its reason. The maker’s order comes first.',
    how: [
      (shown) => say`Before the procedure starts, open ${shown.order.own.title}.`,
      'Tap the fasteners one after another, or type their numbers.',
      (shown) => say`${shown.order.own.compare} shows what the order does to the clamp load.`,
      (shown) => say`Press ${shown.run.confirm.useOrder} and say why.`,
    ],
    troubles: [
      {
        when: 'A fastener is missing in the order.',
        then: 'The start waits until each is named once.',
      },
      {
        when: 'The order is to be changed in the middle.',
        then: 'It stays for the whole run. Begin the procedure again, or pull single fasteners before their turn with a reason.',
      },
    ],
  },
}
