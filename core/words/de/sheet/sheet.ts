import { capital, minutesAndSeconds } from '../../formats/index.ts'
import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { namesOf } from '../halves.ts'
import { archive } from '../window/archive.ts'
import { patterns } from '../window/parts.ts'
import { sheetMeasured } from './sheet-measured.ts'
import { sheetRun } from './sheet-run.ts'
import { day } from '../formats.ts'

const chosenBy = {
  chart: 'Auswahltabelle',
  bands: 'Maßfelder',
  person: 'von Hand',
  readings: 'Messwerte',
  tray: 'aus dem Vorrat',
}

export const sheet: Words['sheet'] = {
  flaw: {
    altered: 'NICHT WIE BESTÄTIGT',
    newer: 'UNVOLLSTÄNDIG',
    rules: 'NACH FRÜHEREN REGELN',
    apart: 'EINE VON ZWEI FOLGEN',
  },
  flawed: ({ mark, reason }) => `${mark}. ${reason}`,
  flawedFoot: ({ mark, foot }) => `${mark} · ${foot}`,
  flawedFileName: ({ mark, fileName }) => `${mark} ${fileName}`,
  title: ({ number }) => `Montageblatt ${number}`,
  foot: ({ number, entries, code }) =>
    `Bedplate-Montageblatt ${number} · ${entries} Einträge, Kopfcode ${code}`,
  fileName: ({ number, entries, code }) => `Montageblatt ${number} ${entries}-${code}`,
  verify: 'Aufbau überprüfen',
  practice: {
    foot: 'ÜBUNG: Probelauf, nicht das Blatt eines Aufbaus',
    fileName: ({ engine }) => `ÜBUNG ${engine}`,
    noHeadCode:
      'ÜBUNG. Kein Motor wurde aufgebaut. Dieser Probelauf ist nicht aufgezeichnet, hat daher keinen Kopfcode und beweist nichts.',
  },

  page: {
    printing: 'Drucken',
    backToBuild: '← Zurück zum Aufbau',
    paper: 'Papier',
    saveAsPdf: 'Als PDF speichern',
    print: 'Drucken',
    numbered: ['Seite ', ' von '],
  },

  head: {
    demo: ({ note }) => `DEMO. ${note}`,
    unchecked: ({ enteredBy }) =>
      `NICHT GEPRÜFT. Die Werte des Datenblatts hat ${enteredBy} eingegeben; keine zweite Person hat sie mit dem Handbuch verglichen.`,
    engine: 'Motor',
    revision: ({ name, revision }) => `${name}, Datenblatt Revision ${revision}`,
    build: 'Aufbau',
    serial: 'Seriennummer',
    atTheBench: 'An der Werkbank',
    people: ({ people, apprentice }) =>
      `${people.join(', ')}${apprentice ? ' (Aufbau durch Auszubildende)' : ''}`,
    started: 'Begonnen',
    finished: 'Abgeschlossen',
    notFinished: 'nicht abgeschlossen',
    numbersFrom: 'Werte aus',
    source: ({ from, enteredBy, checkedBy }) =>
      `${from}; eingegeben von ${enteredBy}, ${checkedBy === null ? 'nicht geprüft' : `geprüft von ${checkedBy}`}`,
    accepted: ({ doubt, reason, by, on }) =>
      `Zweifel angenommen von ${by} am ${day(on)}, weil: ${reason} (${doubt})`,
    entries: ({ entries, code }) => [
      `${entries} Einträge, Kopfcode `,
      { code },
      '. Veränderungen sind an diesem Code erkennbar: Eine gekürzte oder neu geschriebene Aufzeichnung hat einen anderen. ' +
        'Verhindert werden sie dadurch nicht.',
    ],
  },

  voided: ({ reason, stamp }) => `UNGÜLTIG: ${reason} (${stamp})`,
  addedAfter: 'Nach dem Abschluss hinzugefügt',
  added: ({ stamp, text, reason }) => `${stamp}: ${text} Grund: ${reason}`,

  benches: {
    title: 'Werkbänke',
    handedOver: ({ stamp, from, to, note }) =>
      `${stamp}: von ${from} an ${to} übergeben${note === '' ? '.' : `. ${note}`}`,
    takenOver: ({ stamp, from, to, reason }) =>
      `${stamp}: ${from === null ? '' : `von ${from} `}durch ${to} übernommen. Grund: ${reason}`,
    settled: ({ stamp, bench, entry, reason, givesWay }) =>
      `${stamp}: ab Eintrag ${entry} an zwei Werkbänken getrennt fortgesetzt; die Folge von ${bench} zählt${givesWay ? ' nicht' : ''}. Grund: ${reason}`,
  },

  results: {
    shells: 'Lagerschalen',
    marks: 'Kennzeichen, Bohrung / Zapfen',
    grades: ({ split }) => `Schalen, ${namesOf(split).join(' / ')}`,
    clearance: 'Lagerspiel',
    worstCase: 'Ungünstigster Fall',
    pair: ({ first, second }) => `${first} / ${second}`,
    tightening: 'Verschraubung',
    procedure: 'Anziehvorgang',
    fasteners: 'Erledigt',
    read: 'Abgelesen',
    range: ({ least, most }) => (least === most ? least : `${least} bis ${most}`),
    unread: ({ count }) => `${count} bestätigt, nicht abgelesen`,
    outside: ({ numbers }) => `! außerhalb: ${numbers.join(', ')}`,
    wrench: 'Schlüssel',
    wrenchWith: (facts) =>
      `${facts.wrench}${facts.number === null ? '' : `, Nr. ${facts.number}`}` +
      (facts.calibrated === null ? '' : `, kalibriert ${day(facts.calibrated)}`),
    notStarted: 'nicht begonnen',
    underWay: 'läuft',
    flags: 'Beanstandungen und Antworten',
    noFlags: 'Keine.',
    sealant: 'Dichtmittel',
    bead: 'Dichtraupe',
    laid: 'Aufgetragen',
    closed: 'Letzte Schraube der Verbindung',
    took: 'Dauer',
    minutes: ({ seconds, of }) =>
      seconds === null
        ? `zulässig ${of} min`
        : `${seconds > of * 60 ? '! ' : ''}${minutesAndSeconds(seconds)} von ${of} min`,
    whyOver: ({ reason }) => `Nach abgelaufener Offenzeit geschlossen: ${reason}`,
    signed: 'Unterschriften',
    signatures: ['Aufgebaut', 'Geprüft', 'Übernommen'],
    signature: 'Name, Datum, Unterschrift',
    appendix: 'Einzelheiten',
  },
  fit: {
    title: ({ fit }) => `Lagerschalen: ${fit}`,
    marks: ({ part, typed, stamp }) => `${part}: ${typed ?? 'nicht notiert'} (${stamp}).`,
    chosen: ({ stamp }) => `Gewählt: ${stamp}.`,
    allowed: ({ limits }) => `Zulässig neu: ${limits}.`,
    at: 'Lagerstelle',
    marksHeading: 'Kennzeichen',
    half: ({ half }) => capital(engineParts.halves[half]),
    clearance: 'Lagerspiel',
    chosenBy: 'Gewählt nach',
    shell: ({ grade, pattern, fitted }) =>
      `${grade}${pattern === null ? '' : `, ${patterns[pattern]}`} ${fitted ? '✓' : '(nicht eingelegt)'}`,
    choice: (facts) =>
      [
        `${chosenBy[facts.by]}${facts.reason === '' ? '' : `: ${facts.reason}`}`,
        ...(facts.label === undefined
          ? []
          : [facts.label ?? (facts.arrived ? 'bestellt und eingetroffen' : 'zu bestellen')]),
      ]
        .filter(Boolean)
        .join(', '),
    notComputed: 'nicht berechnet',
    outside: '! außerhalb',
  },
  measured: sheetMeasured,

  run: sheetRun,

  checks: {
    title: 'Prüfungen',
    check: 'Prüfung',
    answer: 'Antwort',
    step: ({ step, counts }) => `${step}${counts ? '' : ' (später neu beantwortet)'}`,
    good: 'in Ordnung',
    notGood: '! nicht in Ordnung',
    allowed: ({ least, most }) => `(zulässig ${least} bis ${most})`,
  },
  steps: {
    title: 'Schritte',
    done: ({ stamp }) => `✓ ${stamp}`,
    notDone: 'nicht erledigt',
    lookedAt: ({ stamp }) => `; geprüft ${stamp}`,
    waitsForSecond: '; ! wartet auf zweite Person',
  },
  corrections: {
    title: 'Korrekturen',
    none: 'Keine.',
    kinds: {
      'pull-taken-back': archive.entries['pull-taken-back'],
      'pull-read-again': archive.entries['pull-read-again'],
      'fastener-loosened': archive.entries['fastener-loosened'],
      'fastener-replaced': archive.entries['fastener-replaced'],
      'run-restarted': archive.entries['run-restarted'],
      'half-taken-out': archive.entries['half-taken-out'],
      'part-taken-out': archive.entries['part-taken-out'],
      'rings-taken-off': archive.entries['rings-taken-off'],
      'measured-part-replaced': archive.entries['measured-part-replaced'],
      'ticks-removed': archive.entries['ticks-removed'],
      'bead-wiped-off': archive.entries['bead-wiped-off'],
      'marks-noted-again': 'Kennzeichen neu notiert',
      'shells-chosen-again': 'Lagerschalen neu gewählt',
      'check-answered-again': 'Prüfung neu beantwortet',
      'readings-noted-again': 'neu gemessen',
      'readings-withdrawn': archive.entries['readings-withdrawn'],
      'step-sent-back': 'zurückgegeben',
    },
  },
  cautions: 'Warnungen',
}
