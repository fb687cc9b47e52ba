import type { Words } from '../../words.ts'

type Explained = Words['run']['explained']

const spread: Explained['spread'] = ({ usual, least, most }) =>
  `${usual} (${least} ${most === null ? 'bis über die Streckgrenze' : `bis ${most}`})`

export const pullExplained: Explained = {
  offer: 'Wirkung dieses Anzugs …',
  title: 'Wirkung dieses Anzugs',
  notCalculated: 'Nicht berechenbar: Davor kommt kein Drehmoment, oder er belastet nichts.',
  spread,
  preload: 'Vorspannkraft danach',
  ofProof: 'Anteil der Prüfkraft',
  ofTorque: 'Vom Drehmoment klemmt',
  clamps: ({ part, whole }) => `${part} von ${whole}`,
  friction: 'Reibungsverlust',
  lost: (facts) =>
    `${facts.share}: Gewinde ${facts.thread}, Kopf ${facts.head}` +
    (facts.prevailing === null ? '' : `, Eindrehen ${facts.prevailing}`),
  stress: 'Spannung beim Anziehen',
  stressAndYield: (facts) =>
    `${facts.mpa} MPa, ${facts.usual} der Streckgrenze (${facts.least} bis ${facts.most})`,
  beforeTurn: 'Vor dem Weiterdrehen',
  preloadFrom: ({ preload, torque }) => `${preload} aus ${torque}`,
  eachDegree: 'Je Grad hinzu',
  proofAfter: 'Prüfkraft nach',
  yieldsFirst: 'Streckgrenze kommt vorher',
  yieldsAfter: 'Streckgrenze nach',
  atTarget: 'Am Ziel',
  states: { elastic: 'elastisch', yielded: 'über der Streckgrenze' },
  onlyExplains: 'Erklärt den Wert des Datenblatts und geht ihm nie vor.',
  workingLoad: (facts) =>
    `Zur Lehre: Von ${facts.force}, die im Lauf an ihr ziehen, spürt die Schraube ${facts.percent}, ${facts.onFastener}; ` +
    `der Rest entlastet die Teile, denen ${facts.clampLeft} Klemmkraft bleiben. ` +
    {
      never: `Die Fuge bleibt bis ${facts.opensAt} geschlossen (übliche Vorspannkraft), unter dieser Last auch bei kleinster.`,
      'at-least-preload': `Die Fuge bleibt bis ${facts.opensAt} geschlossen (übliche Vorspannkraft); bei kleinster öffnet sie.`,
      'at-usual-preload': `Die Fuge öffnet schon bei ${facts.opensAt}.`,
    }[facts.opens],
  inputs: 'Berechnet aus',

  plot: {
    title: 'Vorspannkraft über Drehwinkel',
    yields: ({ force }) => `Streckgrenze, ${force}`,
    proof: ({ force }) => `Prüfkraft, ${force}`,
    snug: ({ force }) => `Fügemoment, ${force}`,
    turn: 'Drehwinkel ab Drehmoment →',
  },
}
