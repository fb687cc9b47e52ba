import type { Words } from '../../words.ts'

type Wrench = Words['run']['wrench']

const setup: Wrench['setup'] = ({ wrench, adapter, angle }) =>
  adapter === null ? wrench : `${wrench} mit ${adapter} bei ${angle}°`

export const wrenchForPull: Wrench = {
  title: 'Schlüssel',
  offer: 'Schlüssel …',
  set: (facts) => [
    `${facts.wrench}${facts.adapter === null ? '' : ` mit ${facts.adapter}`}: einstellen auf `,
    { strong: facts.setting },
    ...(facts.torque === null ? [] : [`, an der Schraube ${facts.torque}`]),
  ],
  another: 'Anderer Schlüssel, ohne Adapter: Die Skala zeigt, was die Schraube hat.',
  noneListed: 'Die Liste der Schlüssel ist leer.',

  forThisPull: 'Schlüssel für diesen Anzug',
  usable: 'Geeignete Schlüssel',
  setup,
  setTo: (facts) => `${facts.best ? 'Am besten: ' : ''}${setup(facts)}: einstellen auf ${facts.setting}`,
  gives: (facts) =>
    `Ergibt ${facts.torque}, ${facts.rounding === null ? 'genau das Ziel' : `${facts.rounding} % Abweichung durch Rundung auf einen Teilstrich`}` +
    `; mit ±${facts.deviation} % des Schlüssels ${facts.least} bis ${facts.most}.` +
    (facts.exact === null ? '' : ` Mit Adapter genaue Einstellung ${facts.exact}.`),
  inUse: '✓ In Gebrauch: Messwerte gelten mit diesem Schlüssel.',
  take: (of) => `Verwenden: ${setup(of)}`,
  takeAnother: 'Anderen Schlüssel verwenden, ohne Adapter',
  notThese: 'Nicht geeignet',
  notUsable: 'Nicht geeignete Schlüssel',
}
