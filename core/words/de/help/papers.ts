import { say, type TopicsOf } from '../../help/help-words.ts'

/** The end of a build, and what is printed, kept and found again. */
export const papers: TopicsOf<'papers'> = {
  finish: {
    title: 'Einen Aufbau abschließen',
    whatFor:
      'Sind alle Schritte erledigt und alle Beanstandungen beantwortet, wird der Aufbau abgeschlossen.',
    how: [
      (shown) => say`${shown.steps.finish.lookAtSheet} drücken und es durchlesen.`,
      (shown) => say`${shown.steps.finish.finish} drücken. Danach ist die Arbeit nicht mehr zu ändern.`,
      'Das Blatt drucken oder als PDF sichern.',
      (shown) => say`Was später auffällt, wird mit ${shown.steps.afterwards.amend} hinzugefügt.`,
    ],
    troubles: [
      {
        when: 'Ein Schritt ist wieder offen.',
        then: 'Etwas, worauf er aufbaut, wurde zurückgenommen oder geändert. Diesen Schritt noch einmal tun.',
      },
      {
        when: 'Der Aufbau soll nicht gelten.',
        then: (shown) =>
          say`${shown.steps.afterwards.void} drücken und begründen. Was aufgezeichnet ist, bleibt.`,
      },
    ],
  },
  sheet: {
    title: 'Das Montageblatt',
    whatFor:
      'Alles, was in einem Aufbau getan wurde, auf Papier: zuerst die Ergebnisse, dann jeder Anzug mit Zeit und Name.',
    how: [
      (shown) => say`${shown.buildWindow.sheet} jederzeit drücken; was nicht getan ist, fehlt dort.`,
      (shown) =>
        say`A4 oder Letter wählen, dann ${shown.sheet.page.print} oder ${shown.sheet.page.saveAsPdf}.`,
      'Das Blatt oder seinen Kopfcode getrennt von diesem Rechner aufbewahren: Damit lässt sich später zeigen, dass die Einträge dieselben sind.',
    ],
    troubles: [
      {
        when: 'Auf jeder Seite steht, dass es nicht wie bestätigt ist.',
        then: (shown) =>
          say`Die Aufzeichnung wurde verändert. Unter ${shown.engines.record} feststellen, wo; das Blatt nicht herausgeben.`,
      },
      {
        when: 'Das PDF ist nicht da.',
        then: 'Die Zeile unter den Tasten sagt, wo es gespeichert wurde und warum nicht.',
      },
    ],
  },
  'order-and-labels': {
    title: (shown) => shown.shells.orderAndLabels,
    whatFor: 'Was für diesen Aufbau zu bestellen ist, und ein Etikett für jede Schale.',
    how: [
      'Die Seite drucken und die Etiketten an ihren Linien schneiden.',
      'Jede Schale auf ihr Etikett legen, sobald sie da ist.',
      (shown) =>
        say`${shown.tray.orderCsv} und ${shown.tray.labelsCsv} sind Dateien für eine Tabellenkalkulation.`,
    ],
    troubles: [
      {
        when: 'Eine Schale ist aufgeführt, die im Regal liegt.',
        then: (shown) => say`Den Vorrat zählen: ${shown.shells.countTray} in dem Schritt, der Schalen wählt.`,
      },
    ],
  },
  'bench-card': {
    title: (shown) => shown.run.benchCard,
    whatFor:
      'Ein Anziehvorgang oder die Stöße der Ringe auf einem Blatt Papier, für eine Werkbank ohne Bildschirm.',
    how: [
      (shown) =>
        say`Im Schritt des Anziehvorgangs ${shown.run.benchCard} drücken, oder ${shown.rings.card.open}.`,
      'Drucken; Seriennummer, Name, Datum und Schlüssel darauf schreiben.',
      'Jede Schraube abhaken, sobald sie angezogen ist, Durchgang für Durchgang.',
      'Danach im Aufbau eingeben: Die Karte ist keine Aufzeichnung.',
    ],
    troubles: [
      {
        when: 'Das Datenblatt hat eine neuere Revision als die Karte.',
        then: 'Die Karte wegwerfen und eine neue drucken.',
      },
    ],
  },
  'clamp-map': {
    title: (shown) => shown.run.clampMap,
    whatFor: 'Wie Schrauben einander beim Anziehen Last abnehmen, in zwei Reihenfolgen nebeneinander.',
    how: [
      (shown) => say`Im Schritt eines Anziehvorgangs ${shown.run.clampMap} drücken.`,
      'Die zwei Reihenfolgen wählen, und was zwischen den Flächen liegt.',
      'Den Schieber bewegen und sehen, wo die Verbindung aufklafft.',
      'Die Lasten in Zahlen stehen in der Tabelle.',
    ],
    troubles: [
      {
        when: 'Die Lasten passen nicht zum Handbuch.',
        then: 'Es ist ein Lehrmodell, keine Berechnung dieser Verbindung. Seine Annahmen stehen unten auf der Seite.',
      },
    ],
  },
  archive: {
    title: (shown) => shown.archive.title,
    whatFor: 'Jeder Aufbau dieser Werkbank: finden, exportieren, importieren, prüfen, vergleichen.',
    how: [
      'Wörter eingeben: Motor, Seriennummer, Person, Teil.',
      'Einen Aufbau ankreuzen zum Exportieren oder Prüfen, zwei desselben Motors zum Vergleichen.',
      (shown) => say`${shown.archive.exportOne} macht die Datei für eine andere Werkbank.`,
      'Eine solche Datei auf die Seite ziehen, um sie zu importieren.',
      'Einen Aufbau antippen, um ihn zu öffnen.',
    ],
    troubles: [
      {
        when: 'Eine Datei wird abgewiesen.',
        then: 'Ein Byte wurde verändert, oder ihre Einträge brechen eine Regel. Sie noch einmal anfordern; der Grund steht dort.',
      },
      {
        when: 'Derselbe Aufbau wurde an zwei Werkbänken weitergeführt.',
        then: 'Nichts wird vermischt. Feststellen, welcher am Motor getan wurde, und den anderen für ungültig erklären.',
      },
    ],
  },
  comparison: {
    title: (shown) => shown.archive.compared.title,
    whatFor: 'Zwei Aufbauten eines Motors nebeneinander: Kennzeichen, Schalen, Prüfungen, Anziehen.',
    how: [
      (shown) =>
        say`In ${shown.archive.title} zwei Aufbauten eines Motors ankreuzen und ${shown.archive.compareTwo} drücken.`,
      'Zuerst ist nur zu sehen, was abweicht; es lässt sich auf alles umstellen.',
      'Oben auf die Revision des Datenblatts achten: Weicht sie ab, kann auch anderes verlangt worden sein.',
    ],
    troubles: [
      {
        when: 'Zwei Aufbauten lassen sich nicht vergleichen.',
        then: 'Sie gehören zu zwei Motoren.',
      },
    ],
  },
}
