import type { Words } from '../../words.ts'
import { day, fixed, plain } from '../formats.ts'

export const instruments: Words['instruments'] = {
  title: 'Messgeräte und Ansagen',
  onCable: 'Messgeräte mit serieller Schnittstelle',
  about:
    'Messgerät oder Schlüssel mit serieller Schnittstelle (USB oder RS-232) sendet den Messwert in das Feld, das danach fragt, wie ein Gerät, das tippt. Geräte, die wie eine Tastatur tippen, brauchen hier keinen Eintrag.',
  cannot:
    'Dieser Browser hat kein Web Serial, serielle Messgeräte sind hier nicht lesbar. Chromium, Chrome, Edge oder das Desktop-Programm verwenden, oder ein Messgerät, das wie eine Tastatur tippt.',
  add: 'Messgerät hinzufügen',
  none: 'Noch kein Messgerät eingetragen.',
  connect: 'Verbinden …',
  disconnect: 'Trennen',
  remove: 'Entfernen',
  keep: 'Speichern',
  cancel: 'Abbrechen',
  change: 'Ändern',

  name: 'Name',
  number: 'Gerätenummer (optional)',
  unit: 'Misst in',
  feeds: 'Darf liefern',
  fields: {
    torque: 'Drehmoment eines Anzugs',
    angle: 'Drehwinkel eines Anzugs',
    length: 'Länge einer Schraube, Spalt einer Fuge',
    sizes: 'Maße von Bohrungen und Zapfen',
    limits: 'Messwerte mit Grenzen',
    checks: 'Prüfungen',
  },
  baudRate: 'Geschwindigkeit in Baud',
  dataBits: 'Datenbits',
  parity: 'Parität',
  parities: { none: 'keine', even: 'gerade', odd: 'ungerade' },
  stopBits: 'Stoppbits',
  deviation: ({ unit, isShare }) =>
    isShare
      ? 'Mögliche Abweichung in % vom Messwert (optional)'
      : `Mögliche Abweichung in ${unit} (optional)`,
  calibratedOn: 'Kalibriert am (optional)',
  nameMissing: 'Einen Namen geben, um es von anderen zu unterscheiden.',
  deviationWrong: 'Die Abweichung ist eine Zahl von 0 bis 100.',
  inShort: (facts) =>
    `${facts.unit} · ${facts.baudRate} ${facts.dataBits}${facts.parity[0]!.toUpperCase()}${facts.stopBits}`,
  offBy: ({ deviation, unit, isShare }) =>
    isShare ? `Abweichung bis ±${fixed(deviation, 1)} %` : `Abweichung bis ±${plain(deviation)} ${unit}`,
  deviationUnknown: 'mögliche Abweichung nicht notiert',
  calibrated: ({ on }) => `kalibriert am ${day(on)}`,
  calibrationOld: ({ on }) => `kalibriert am ${day(on)}, vor mehr als einem Jahr: kalibrieren lassen`,
  calibrationToCome: ({ on }) =>
    `kalibriert am ${day(on)}, in der Zukunft: Datum oder Uhr dieses Rechners berichtigen`,
  calibrationUnknown: 'keine Kalibrierung notiert',

  readWith: ({ name, number }) => `gemessen mit ${name}${number === '' ? '' : ` ${number}`}`,
  sentTyped: 'gesendet von einem Messgerät, das tippt',

  states: {
    closed: 'Nicht verbunden.',
    opening: 'Verbindet …',
    open: '✓ Verbunden.',
    unplugged: '! Abgesteckt. Wird nach dem Einstecken wieder gelesen.',
    busy: '! Schnittstelle lässt sich nicht öffnen. Vielleicht benutzt sie ein anderes Programm, oder die Einstellungen sind nicht möglich: anderes Programm schließen, dann erneut verbinden.',
    garbled:
      '! Was ankommt, ist kein Messwert. Geschwindigkeit, Datenbits, Parität und Stoppbits mit dem Handbuch des Messgeräts vergleichen, dann erneut verbinden.',
    streams:
      '! Sendet ständig, damit ist kein Messwert als gemeint erkennbar. Auf Senden per Tastendruck einstellen.',
    'not-chosen': 'Keine Schnittstelle gewählt.',
    refused: '! Das System lässt das Programm keine seriellen Schnittstellen lesen.',
  },
  lastSent: ({ sent }) => `Letzter Messwert: ${sent}`,

  unplugged: ({ name }) => `${name} wurde abgesteckt. Messwerte eintippen oder wieder einstecken.`,
  unpluggedMidLine: ({ name }) =>
    `${name} wurde mitten im Messwert abgesteckt. Angekommenes ist verworfen: wieder einstecken und erneut senden.`,
  pluggedIn: ({ name }) => `✓ ${name} ist wieder verbunden.`,
  unitUnknown: ({ name, unit }) =>
    `${name} sendete eine Zahl in „${unit}“, hier keine Einheit eines Messwerts. Verworfen: Messgerät auf andere Einheit stellen.`,
  otherField: ({ name, sent }) =>
    `${name} sendete ${sent}, das passt nicht in dieses Feld. Es ist aufgehoben.`,
  streams: ({ name }) =>
    `${name} sendet ständig: Nichts davon wird übernommen. Auf Senden per Tastendruck einstellen.`,
  garbled: ({ name }) =>
    `${name} sendet keine Messwerte. Einstellungen unter „Messgeräte und Ansagen“ vergleichen.`,
  seen: 'Gesehen',
}
