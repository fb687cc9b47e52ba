/** How the program stands, to be read out over the phone: a line for each subject. */
export const doctor = {
  subjects: {
    program: 'program',
    host: 'host',
    'data folder': 'data folder',
    disk: 'disk',
    record: 'record',
    backup: 'backup',
    fonts: 'fonts',
    screen: 'screen',
    voices: 'voices',
  },
  signs: { good: '✓', look: '? look', bad: '! bad' },
  fontsLookedAt: 'Being looked at …',
  fontsLoaded: ({ font }: { readonly font: string }) => `${font} is loaded, plain and bold.`,
  fontsMissing: ({ font, weights }: { readonly font: string; readonly weights: readonly string[] }) =>
    `${font} is not loaded (${weights.join(', ')}), so text and numbers may be cut off. Start the program again; if ` +
    'that does not help, install it again.',
  screen: (facts: {
    readonly widthPx: number
    readonly heightPx: number
    readonly scale: number
    readonly distance: number
    readonly pxPerMm: number
    readonly measured: boolean
  }) =>
    `The window is ${facts.widthPx} by ${facts.heightPx} points at ${Math.round(facts.scale * 100)} % scale. ` +
    `It is read from ${facts.distance} m, with ${facts.pxPerMm.toFixed(2)} points to a millimetre, ` +
    (facts.measured
      ? 'as measured against a card.'
      : 'which is a guess: measure the screen under “Screen and keys”.'),
  voices: 'The program does not speak, so it needs no voice of this machine.',
}
