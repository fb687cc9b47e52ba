import type { Words } from '../../words.ts'

export const flags: Words['flags'] = {
  deeds: {
    replaced: 'Gelöst, durch eine neue ersetzt und ab dem ersten Durchgang neu angezogen.',
    'begun-again': 'Gelöst und ab dem ersten Durchgang neu angezogen.',
    'turned-on': 'Vom erreichten Stand weitergedreht.',
    'tightened-on': 'Vom erreichten Stand weiter angezogen.',
    'pass-repeated': 'Durchgang wird wiederholt, bis sich keine mehr bewegt.',
  },
  causes: {
    'to-be-replaced': 'Zu viel: ersetzen',
    'to-begin-again': 'Zu viel: neu beginnen',
    'gap-out': 'Spalt außerhalb der Grenzen',
    'crank-stiff': 'Kurbelwelle drehte zu schwer',
    'joint-opened': 'Schrauben der Verbindung zum Neubeginn gelöst',
  },
  moved: 'bewegt',
  reads: ({ read, limits }) => `abgelesen ${read}, ${limits}`,
  measured: ({ read, limits }) => `gemessen ${read}, ${limits}`,
}
