import type { Words } from '../../words.ts'
import { counted, day, dayAndTime, fixed, plain } from '../formats.ts'

type Doctor = Words['doctor']

const subjects: Doctor['subjects'] = {
  program: 'Programm',
  host: 'Host',
  'data-folder': 'Datenordner',
  disk: 'Datenträger',
  record: 'Aufzeichnung',
  photos: 'Fotos',
  backup: 'Sicherung',
  shop: 'Werkstatt',
  fonts: 'Schriften',
  screen: 'Bildschirm',
  voices: 'Stimmen',
  instruments: 'Messgeräte',
}
const terminalSigns = { good: 'gut     ', look: 'ansehen ', bad: 'SCHLECHT' }

const secondFolderText = ({ secondFolder }: { readonly secondFolder: string | null }): string =>
  secondFolder === null ? 'Kein zweiter Ordner gewählt.' : `Zweiter Ordner: ${secondFolder}.`

function ageText(days: number): string {
  if (days <= 0) return 'weniger als einen Tag'
  return days === 1 ? '1 Tag' : `${days} Tage`
}

export const doctor: Doctor = {
  subjects,
  terminalLine: (facts) => `${terminalSigns[facts.state]}  ${subjects[facts.subject]}: ${facts.text}`,
  restInWindow:
    'Schriften, Bildschirm, Stimmen und Messgeräte prüft nur das Fenster: Seite „Aufzeichnung und Sicherungen“.',
  signs: { good: '✓', look: '? prüfen', bad: '! schlecht' },
  fontsLookedAt: 'Wird geprüft …',
  fontsLoaded: ({ font }) => `${font} ist geladen, normal und fett.`,
  fontsMissing: ({ font, weights }) =>
    `${font} ist nicht geladen (${weights.join(', ')}), Texte und Zahlen können abgeschnitten sein. Programm neu starten; hilft ` +
    'das nicht, neu installieren.',
  screen: (facts) =>
    `Das Fenster ist ${facts.widthPx} mal ${facts.heightPx} Punkte groß, Skalierung ${Math.round(facts.scale * 100)} %. ` +
    `Leseabstand ${plain(facts.distance)} m, ${fixed(facts.pxPerMm, 2)} Punkte je Millimeter, ` +
    (facts.measured
      ? 'mit einer Karte gemessen.'
      : 'geschätzt: den Bildschirm unter „Bildschirm und Tasten“ messen.'),
  voices: {
    'cannot-speak': 'Dieser Browser kann nicht sprechen. Ansagen stehen nur auf dem Bildschirm.',
    none: 'Keine deutsche Stimme ohne Netzverbindung vorhanden, Ansagen stehen nur auf dem Bildschirm.',
  },
  voiceUsed: ({ voice, on }) =>
    on
      ? `Ansagen werden gesprochen, Stimme ${voice}.`
      : `Ansagen werden nicht gesprochen. Stimme ${voice} ist vorhanden: unter „Messgeräte und Ansagen“ einschalten.`,
  instruments: {
    none: 'Kein Messgerät mit serieller Schnittstelle eingetragen.',
    'no-serial': 'Dieser Browser hat kein Web Serial: serielle Messgeräte sind hier nicht lesbar.',
  },
  instrumentsOpen: ({ open, names }) => `${names.join(', ')}: ${open} von ${names.length} verbunden.`,

  lines: {
    program: (facts) =>
      `Bedplate ${facts.version} auf ${facts.electron === null ? '' : `Electron ${facts.electron} mit `}` +
      `Node ${facts.node}, ${facts.platform} ${facts.arch}.`,
    host: ({ host, why }) => `Läuft im Host „${host}“: ${why}.`,
    'folder-closed': ({ folder }) => `Datenordner ${folder} ist für diesen Benutzer nicht beschreibbar.`,
    'folder-to-come': ({ folder }) => `Datenordner ${folder} fehlt noch; er wird beim ersten Start angelegt.`,
    'folder-open-to-others': ({ folder }) =>
      `Datenordner ${folder} ist beschreibbar, aber für andere Benutzer dieses Rechners lesbar.`,
    'folder-of-this-user': ({ folder }) => `Datenordner ${folder} ist beschreibbar, nur für diesen Benutzer.`,
    'disk-full': ({ megabytes }) =>
      `Nur ${megabytes} MB frei auf dem Datenträger. Vor dem Weiterarbeiten Platz schaffen.`,
    'disk-free': ({ megabytes }) => `${megabytes} MB frei auf dem Datenträger.`,
    'disk-unknown': (_) => 'Freier Platz auf dem Datenträger unbekannt.',
    'record-to-come': (_) => 'Noch keine Aufzeichnung; sie wird beim ersten Start angelegt.',
    'record-in-use': (_) => 'Die Aufzeichnung ist in Gebrauch: Bedplate läuft.',
    'record-closed': ({ why }) => why,
    'record-opens': ({ builds, megabytes }) =>
      `Die Aufzeichnung lässt sich öffnen: ${counted(builds, 'Aufbau', 'Aufbauten')}, ${plain(megabytes)} MB.`,
    'photos-there': ({ photos, megabytes }) =>
      `${counted(photos, 'Foto', 'Fotos')} der Aufbauten, ${plain(megabytes)} MB; alle wie aufgezeichnet.`,
    'photos-not-there': (facts) =>
      `${counted(facts.photos, 'Foto', 'Fotos')}, davon beschädigt: ${facts.damaged}, fehlend: ${facts.missing}. Die Aufbauten sind ` +
      'nicht betroffen. Archiv überprüfen, um sie zu finden.',
    'shop-connected': ({ address, entries }) =>
      `Beigetreten unter ${address}. ${entries === 0 ? 'Nichts wartet auf Übertragung.' : `${counted(entries, 'Eintrag wartet', 'Einträge warten')} auf Übertragung.`}`,
    'shop-not-reached': ({ why, since, entries }) =>
      `${why}${since === null ? '' : ` So seit ${dayAndTime(since)}.`} ${counted(entries, 'Eintrag wartet', 'Einträge warten')} hier auf Übertragung.`,
    'shop-refused': ({ refused, apart }) =>
      `Abgelehnt: ${counted(refused, 'Aufbau', 'Aufbauten')}; an zwei Werkbänken getrennt fortgesetzt: ${counted(apart, 'Aufbau', 'Aufbauten')}. Siehe Seite „Werkstatt“.`,
    'backup-none': (facts) => `Keine Sicherung vorhanden. ${secondFolderText(facts)}`,
    'backup-of-later': (facts) =>
      `Die letzte Sicherung trägt das Datum ${day(facts.on)}, die Uhr dieses Rechners zeigt ${day(facts.today)}. Eines davon ist ` +
      `falsch. ${secondFolderText(facts)}`,
    'backup-newest': (facts) =>
      `Die letzte Sicherung ist ${ageText(facts.days)} alt (${counted(facts.builds, 'Aufbau', 'Aufbauten')}, ` +
      `${counted(facts.entries, 'Eintrag', 'Einträge')}, Kopfcode ${facts.head}).` +
      (facts.broken === 0 ? '' : ' Beim Anlegen war nicht alles wie bestätigt; Archiv überprüfen.') +
      ` ${secondFolderText(facts)}`,
  },
}
