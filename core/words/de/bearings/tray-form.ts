import { capital } from '../../formats/index.ts'
import type { Words } from '../../words.ts'
import { namesOf } from '../halves.ts'

export const trayForm: Words['shells']['tray'] = {
  heading: 'Schalenvorrat',
  choose: 'Aus diesem Vorrat wählen',
  count: 'Vorhandene Schalen zählen; wo keine sind, leer lassen.',
  bothAre: ({ split }) => {
    const [first, second] = namesOf(split)
    return `${capital(first)} und ${second} sind`
  },
  halves: { alike: 'dasselbe Teil', differ: 'verschieden' },
  shellsOf: ({ label }) => `Schalen ${label}`,
  wall: ({ unit }) => `Wanddicke, ${unit}`,
  worn: ({ undersize, wall }) =>
    `Gebrauchte Schale${undersize === null ? '' : ` für ${undersize}`} wiederverwendbar ab Wanddicke ${wall}. Im Scheitel messen.`,
  takeAway: ({ label }) => `${label} entfernen`,
  addSingle: 'Einzelschale mit gemessener Wanddicke',
  back: '← Zurück zu den Schalen',
  withoutTray: 'Ohne Vorrat wählen',
}
