import type { buildWords as pattern } from '../../en/problems/build.ts'
import type { HalfName } from '../../formats/index.ts'
import type { Table } from '../../table.ts'
import { halves, pairText } from '../halves.ts'

const undo: Readonly<Record<string, string>> = {
  'fit-shells': 'Zuerst die Lagerschalen herausnehmen',
  'fit-part': 'Zuerst das Teil ausbauen',
  'lay-bead': 'Zuerst die Dichtraupe abwischen',
  'run-procedure': 'Zuerst die Anzüge zurücknehmen, den letzten zuerst, und Gedrehtes lösen',
  check: 'Zuerst mit „nicht in Ordnung“ beantworten',
  lubricate: 'Zuerst die Stellen zurücknehmen',
  orient: 'Zuerst die Stellen zurücknehmen',
  align: 'Zuerst die Stellen zurücknehmen',
  'fit-places': 'Zuerst die Stellen zurücknehmen',
  'fit-rings': 'Zuerst die Kolbenringe abnehmen',
  turn: 'Zuerst angeben, dass der Messwert nicht gilt',
}

const halfAt = ({ position, half }: { readonly position: string; readonly half: HalfName }): string =>
  `${position}, Hälfte ${halves[half]}`

export const buildWords: Table<typeof pattern> = {
  'build-finished': ({ name }) =>
    `„${name}“ ist abgeschlossen und nicht mehr änderbar; berichtigen oder einen neuen Aufbau beginnen.`,
  'build-voided': ({ name }) =>
    `„${name}“ ist ungültig. Nichts kann hinzugefügt werden; einen neuen Aufbau beginnen.`,
  'build-elsewhere': ({ name, bench, is }) =>
    is === 'voided'
      ? `„${name}“ war zuletzt bei ${bench} und ist ungültig. Nichts kann hinzugefügt werden.`
      : is === 'finished'
        ? `„${name}“ ist bei ${bench} abgeschlossen. Dort berichtigen, oder mit Begründung hier übernehmen und dann berichtigen.`
        : `„${name}“ ist bei ${bench}. Dort fortsetzen, übergeben lassen oder mit Begründung hier übernehmen.`,
  'build-is-here': ({ bench }) => `Der Aufbau ist schon bei ${bench}, also hier. Aufbau fortsetzen.`,
  'handed-to-itself': ({ bench }) => `${bench} ist diese Werkbank. Die Werkbank wählen, die fortsetzen soll.`,
  'bench-name-missing': (_) =>
    'Die Werkbank hat keinen Namen. Eintragen, wie sie genannt wird, zum Beispiel „Werkbank 2“.',
  'shop-not-joined': (_) => 'Diese Werkbank gehört zu keiner Werkstatt. Auf der Seite „Werkstatt“ beitreten.',
  'bench-unknown': (_) => 'Die Werkstatt kennt diese Werkbank nicht. Eine aus der Liste wählen.',
  'bench-unnamed': (_) =>
    'Diese Werkbank gehört zu keiner Werkstatt, es gibt keine andere zum Fortsetzen. Zuerst der Werkstatt beitreten.',
  'build-apart': ({ name, bench, entry, own }) =>
    `„${name}“ wurde ab Eintrag ${entry} ${own === null ? 'hier' : `bei ${own}`} und bei ${bench} getrennt fortgesetzt. Feststellen, was am Motor getan wurde, beide Folgen ansehen und an einer der beiden Werkbänke entscheiden, welche zählt.`,
  'build-line-left': ({ name, bench, entry, own }) =>
    `Für „${name}“ zählt ab Eintrag ${entry} die Folge von ${bench}. Was ${own === null ? 'hier' : `bei ${own}`} eingetragen wurde, bleibt hier erhalten und lesbar, aber diese Aufzeichnung kann den Aufbau nicht fortsetzen. Bei ${bench} fortsetzen; oder das Programm hier mit einem leeren Datenordner starten, damit der Werkstatt beitreten und den Aufbau dort übernehmen.`,
  'bench-line-left': ({ name, bench }) =>
    `${bench} hat „${name}“ getrennt fortgesetzt, und diese Folge zählt nicht. Die Aufzeichnung dort behält sie; der Aufbau kann dort gelesen, aber nicht fortgesetzt werden. Einer anderen Werkbank übergeben oder hier behalten.`,
  'build-not-apart': ({ name }) =>
    `„${name}“ hat nur eine Folge von Einträgen; es gibt nichts zu entscheiden.`,
  'build-not-finished': (_) =>
    'Der Aufbau ist nicht abgeschlossen und noch nicht zu berichtigen. Falsches dort zurücknehmen, wo es eingetragen wurde.',
  'step-not-awaiting': ({ step }) => `„${step}“ wartet nicht auf eine zweite Person. Aufbau fortsetzen.`,
  'step-unconfirmed': ({ step }) =>
    `„${step}“ wartet auf Prüfung durch eine zweite Person. Jemanden rufen, dann fortsetzen.`,
  'step-unknown': ({ step }) => `Dieser Motor hat keinen Schritt „${step}“. Einen seiner Schritte wählen.`,
  'step-before': ({ step, first }) => `„${step}“ kommt später. Zuerst „${first}“ erledigen.`,
  'step-on-top': ({ step, top, kind }) =>
    `„${top}“ baut auf „${step}“ auf. ${undo[kind] ?? 'Zuerst rückgängig machen'}; danach ist die Änderung möglich.`,
  'sealant-over-time': (facts) =>
    `${facts.beads.join(', ')}: Die Offenzeit des Dichtmittels, ${facts.minutes} min, ist abgelaufen. Verbindung öffnen, reinigen und ` +
    'neue Dichtraupe auftragen oder begründen, warum trotzdem geschlossen wird.',
  'restart-opens-joint': ({ steps }) =>
    `Neubeginn mit dem ersten Durchgang öffnet die Verbindung, ihr Dichtmittel dichtet kein zweites Mal. Neu zu erledigen: ${steps.join(', ')}. ` +
    'Das annehmen oder mit einem späteren Durchgang beginnen.',
  'step-done-already': ({ step }) => `„${step}“ ist schon erledigt. War das ein Versehen, zurücknehmen.`,
  'step-not-done': ({ step }) => `„${step}“ ist nicht erledigt, es gibt nichts zurückzunehmen.`,
  'measure-unknown': ({ step, place }) =>
    `„${step}“ misst nichts an „${place}“. Eine der vorgesehenen Stellen wählen.`,
  'place-unknown': ({ step, place }) =>
    `„${step}“ hat keine Stelle „${place}“. Eine der vorgesehenen Stellen wählen.`,
  'place-done-already': ({ step, place }) =>
    `${place} ist in „${step}“ schon erledigt. War das ein Versehen, zurücknehmen.`,
  'place-not-done': ({ step, place }) =>
    `${place} ist in „${step}“ nicht erledigt, es gibt nichts zurückzunehmen.`,
  'marks-first': ({ place, first }) =>
    `${place} wird nochmals geprüft, wenn alle Markierungen stehen. Zuerst ${first} einstellen.`,
  'turning-missing': ({ step }) =>
    `„${step}“ hat Grenzwerte. Drehmoment zum Durchdrehen der Kurbelwelle ablesen und eintippen.`,
  'turning-by-hand': ({ step }) =>
    `„${step}“ hat keine Grenzwerte im Datenblatt. Kurbelwelle von Hand durchdrehen und angeben, ob sie frei dreht.`,
  'turning-not-outside': ({ step }) =>
    `„${step}“: Dort liegt nichts außerhalb der Grenzen. Zuerst die Kurbelwelle durchdrehen.`,
  'ring-gap-zero': ({ place }) =>
    `${place}: Stoßspiel 0 ist kein Messwert, Ringenden dürfen sich nie berühren. Mit dem dünnsten Blatt der Fühlerlehre messen; geht ` +
    'auch das nicht hinein, Ring nachfeilen oder anderen einsetzen und neu messen.',
  'nothing-outside': ({ name, place }) =>
    `${name}, ${place}: Dort liegt nichts außerhalb der Grenzen. Zuerst messen.`,
  'part-unknown': ({ part }) => `Die Teileliste hat kein Teil „${part}“. Ein Teil der Liste wählen.`,
  'part-not-in-step': ({ part, step }) =>
    `„${part}“ wird in „${step}“ nicht verwendet. In einem Schritt abhaken, der es verwendet.`,
  'parts-ticked-already': ({ part, step }) =>
    `„${part}“ ist in „${step}“ schon abgehakt. War das ein Versehen, den Haken zurücknehmen.`,
  'parts-not-ticked': ({ part, step }) => `„${part}“ ist in „${step}“ nicht abgehakt.`,
  'parts-too-many': ({ part, step, count, left }) =>
    `„${step}“ braucht noch ${left} Stück „${part}“, nicht ${count}. Neu zählen.`,
  'part-unaccounted': ({ part, step, left }) =>
    `„${part}“ für „${step}“: ${left} Stück nicht abgehakt. Eingebautes abhaken oder Verbleib angeben.`,
  'steps-left': ({ first }) => `Aufbau noch nicht abschließbar: „${first}“ ist offen. Zuerst erledigen.`,
  'marks-missing': ({ fit }) => `${fit}: Kennzeichen fehlen. Zuerst die Kennzeichen beider Teile notieren.`,
  'shell-in-place': (facts) =>
    `${halfAt(facts)}: Schale liegt schon. Vor einer Änderung an Kennzeichen oder Schalen alle Schalen dieser Lagerung herausnehmen.`,
  'shell-undecided': (facts) => `${halfAt(facts)}: kein Vorschlag möglich. Klasse wählen und begründen.`,
  'pair-not-allowed': (facts) =>
    `${facts.position}: ${pairText(facts, ' mit ')} ist bei diesem Motor nicht zulässig. Anderes Paar wählen.`,
  'basis-undecided': ({ position }) =>
    `${position}: Kennzeichen und Messwerte stimmen nicht überein. Neu messen oder entscheiden, was gilt, und begründen.`,
  'nothing-measured': ({ position }) => `${position}: nichts gemessen. Zuerst Messwerte notieren.`,
  'nothing-pinned': ({ position }) =>
    `${position}: keine Lagerschale von Hand gewählt, es gibt nichts zurückzunehmen.`,
  'tray-line-unknown': ({ position, label }) =>
    `${position}: Keine Zeile des Vorrats heißt ${label}. Vorhandene wählen oder zum Vorschlag zurückkehren.`,
  'tray-line-taken': (facts) =>
    `${facts.position}: Im Vorrat ${facts.count === 1 ? 'liegt 1 Schale' : `liegen ${facts.count} Schalen`} ${facts.label}, ` +
    `${facts.at.length === 0 ? 'zu wenig für beide Hälften' : `schon von Hand gewählt bei ${facts.at.join(', ')}`}. ` +
    'Dort zum Vorschlag zurückkehren oder eine andere wählen.',
  'tray-label-missing': ({ line }) =>
    `Zeile ${line} des Vorrats hat keine Bezeichnung. Aufschrift der Packung oder Schale eintragen.`,
  'shell-to-be-ordered': (facts) =>
    `${halfAt(facts)}: Schale der Klasse ${facts.grade} ist noch zu bestellen. Vor dem Einlegen angeben, dass sie eingetroffen ist.`,
  'shell-not-chosen': (facts) => `${halfAt(facts)}: keine Schale gewählt. Zuerst Lagerschalen wählen.`,
  'position-not-in-fit': ({ position, fit }) =>
    `„${position}“ ist keine Lagerstelle von „${fit}“. Eine davon wählen.`,
  'half-in-place': (facts) => `${halfAt(facts)}: Schale liegt schon. War das ein Versehen, herausnehmen.`,
  'half-not-in-place': (facts) => `${halfAt(facts)}: keine Schale eingelegt.`,
  'redo-not-done': ({ step, isRead }) =>
    `„${step}“ ist noch nicht erledigt und nicht zu wiederholen. Falsches darin ` +
    (isRead ? 'erneut messen oder beantworten.' : 'zurücknehmen.'),
  'redo-opens-others': ({ step, others }) =>
    others.length === 0
      ? `Auf „${step}“ baut nichts mehr auf. Nochmals ansehen, dann bestätigen.`
      : `„${step}“ zu wiederholen öffnet auch ${others.map((other) => `„${other}“`).join(', ')} wieder. Liste nochmals ansehen, dann bestätigen.`,
  'redo-not-taken-apart': ({ step, first }) =>
    `„${step}“ ist überbaut. An der Werkbank rückgängig machen, was die Liste nennt, „${first}“ zuerst, und dies angeben; danach ist der Schritt zu wiederholen.`,
  'step-skipped': ({ step }) => `„${step}“ ist übersprungen. Zuerst das zurücknehmen, dann daran arbeiten.`,
  'skip-not-allowed': ({ step }) =>
    `Das Datenblatt dieses Motors lässt „${step}“ nicht überspringen. Ausführen.`,
  'step-begun': ({ step, isRead }) =>
    isRead
      ? `„${step}“ ist schon begonnen, und was darin festgestellt wurde, bleibt. Überspringen ist nicht mehr möglich: abschließen.`
      : `„${step}“ ist schon begonnen. Zurücknehmen, was darin getan wurde; dann ist Überspringen möglich.`,
  'step-not-skipped': ({ step }) => `„${step}“ ist nicht übersprungen, es gibt nichts zurückzunehmen.`,
  'skip-stood-on': ({ step, top }) =>
    `„${top}“ wurde erledigt, seit „${step}“ übersprungen ist. Um ihn doch auszuführen, wiederholen: Das öffnet, was darauf aufbaut.`,
  'check-without-reading': ({ step }) =>
    `„${step}“ verlangt keinen Messwert. Mit „in Ordnung“ oder „nicht in Ordnung“ beantworten.`,
  'check-good-why': ({ step }) => `„${step}“ war nicht in Ordnung. Angeben, was seither getan wurde.`,
  'check-reading-missing': ({ step }) =>
    `„${step}“ verlangt einen Messwert. Anzeige des Messgeräts eintippen.`,
}
