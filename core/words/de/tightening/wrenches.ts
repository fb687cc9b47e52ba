import type { Words } from '../../words.ts'
import { plain } from '../formats.ts'

export const wrenches: Words['wrenches'] = {
  title: 'Drehmomentschlüssel dieser Werkstatt',
  back: 'Zurück',
  line: (facts) =>
    `${facts.least} bis ${facts.most}, Teilung ${plain(facts.step)} ${facts.unit}` +
    (facts.made ? `, Typ ${facts.made.type} Klasse ${facts.made.class}` : '') +
    (facts.adapters.length > 0 ? `, mit ${facts.adapters.join(', ')}` : ''),
  change: ({ name }) => `${name} ändern`,
  remove: ({ name }) => `${name} entfernen`,
  add: 'Schlüssel hinzufügen',
  whatFor:
    'Für jeden Anzug wird der Schlüssel hieraus gewählt: nach Bereich, Teilung, Klasse und Adaptern. ' +
    'Der verwendete wird mit jedem Anzug aufgezeichnet: Name, Nummer, Adapter und Tag der Kalibrierung.',

  form: {
    title: 'Drehmomentschlüssel',
    name: 'Name',
    number: 'Nummer',
    numberExample: 'wie am Schlüssel, fürs Blatt',
    scaleIn: 'Skala in',
    lowest: ({ unit }) => `Kleinster Skalenwert, ${unit}`,
    highest: ({ unit }) => `Größter Skalenwert, ${unit}`,
    step: ({ unit }) => `Teilung, ${unit}`,
    minimum: ({ unit }) => `Angegebener Mindestwert, ${unit}`,
    minimumExample: 'ein Fünftel des Endwerts',
    made: 'Typ und Klasse (ISO 6789)',
    madeExample: 'z. B. II A',
    length: 'Griffmitte bis Abtrieb',
    lengthExample: 'z. B. 450 mm; nötig für Adapter',
    calibratedOn: 'Kalibriert am',
    pullsSince: 'Anzüge seither',
    adapters: 'Adapter, die die Schraube vom Abtrieb wegrücken',
    adapter: 'Adapter',
    offset: 'Stichmaß',
    offsetExample: '40 mm',
    angle: 'Winkel zum Griff',
    angleExample: '0° gerade voraus',
    removeAdapter: ({ name }) => `Adapter ${name} entfernen`,
    removeThis: 'Entfernen',
    addAdapter: 'Adapter hinzufügen',
    keep: 'Schlüssel speichern',
  },
}
