import type { Words } from '../../words.ts'

const side = ({ thrust }: { readonly thrust: boolean }): string => (thrust ? 'Druckseite' : 'Gegendruckseite')

export const rings: Words['rings'] = {
  measures: {
    'ring-gap': ({ ring }) => `${ring}, Stoßspiel`,
    'groove-clearance': ({ ring }) => `${ring}, Höhenspiel`,
  },
  file: (facts) =>
    `! Zu eng. Insgesamt ${facts.least} an den Enden abfeilen` +
    `${facts.most === null ? '' : `, nie mehr als ${facts.most}`}, rechtwinklig und in kleinen Schritten, Kanten brechen und neu messen.`,
  replace: (facts) =>
    `! Um ${facts.by} zu weit. Bohrung messen: Schon ${facts.wider} Verschleiß öffnen den Stoß so weit, denn er wächst um das π-fache ` +
    'der Bohrung. Stimmt die Bohrung, anderen Ring einsetzen.',
  sure: 'Eingabe stimmt',
  confirm: 'Stöße stehen so',
  title: ({ piston }) => `Kolbenringe: ${piston}`,
  say: 'Jeden Stoß an seine Stelle drehen, Blick auf den Kolbenboden, Steuerseite links.',
  up: ({ mark }) => `${mark} oben`,
  noSide: 'Seite beliebig',
  gap: ({ ring, angle }) => `${ring}: ${angle}`,
  clock: ({ piston, gaps }) =>
    gaps.length === 0
      ? `${piston}: Ringe aufzuziehen`
      : `${piston}: ${gaps.map(({ ring, angle }) => `${ring} ${angle}`).join(', ')}`,
  done: ({ text }) => `✓ ${text}`,
  allDone: ({ pistons }) => `✓ Ringe aller ${pistons} Kolben aufgezogen.`,
  places: 'Alle Kolben',
  otherwise: 'Anderer Winkel …',
  asSpec: 'Wie im Datenblatt',
  angleOf: ({ ring }) => `${ring}: Stoß steht bei, in °`,
  whyOff: ({ piston }) => `${piston}: Warum werden die Ringe abgenommen?`,
  takeOff: 'Abnehmen',
  drawing: ({ piston, gaps }) =>
    `${piston} von oben, Steuerseite links. Stöße von dort im Uhrzeigersinn: ` +
    `${gaps.map(({ ring, angle }) => `${ring} bei ${angle}`).join(', ')}.`,
  nose: 'Steuerseite',
  pin: 'Bolzen',
  above: (facts) => `↑ ${side(facts)}`,
  below: (facts) => `↓ ${side(facts)}`,
  sheet: {
    title: 'Kolbenringe und Stöße',
    gaps: 'Stöße, im Uhrzeigersinn ab der Steuerseite, auf den Kolbenboden gesehen',
    takenOff: ({ text, reason }) => `${text}; abgenommen: ${reason}`,
  },
  card: {
    open: 'Ringkarte',
    foot: (facts) => `Bedplate-Ringkarte · ${facts.engine}, Revision ${facts.revision} · ${facts.rings}`,
    rules: (facts) =>
      `Stöße benachbarter Ringe mindestens ${facts.apart} auseinander` +
      `${facts.offPin === null ? '' : `, mindestens ${facts.offPin} vom Bolzenauge`}` +
      `${facts.offThrust === null ? '' : `, mindestens ${facts.offThrust} von der Mitte der Druckseiten`}.`,
    ring: 'Ring',
    up: 'Oben',
    stands: 'Stoß bei',
  },
}
