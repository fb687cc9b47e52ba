import { say, type TopicsOf } from '../../help/help-words.ts'

/** Steps that choose, measure and fit. */
export const steps: TopicsOf<'steps'> = {
  marks: {
    title: 'Maßkennzeichen ablesen',
    whatFor:
      'Die Kennzeichen an Gehäuse, Kurbelwelle und Pleueln sagen, welches Maß jede Bohrung und jeder Zapfen hat. Daraus folgen die Schalen.',
    how: [
      'Die Kennzeichen sauber wischen und die Steuerseite suchen.',
      'Von der Steuerseite zur Abtriebsseite lesen, wie sie eingeschlagen sind.',
      'Nacheinander eingeben, mit oder ohne Leerzeichen.',
      'Für ein unleserliches Kennzeichen ? eingeben.',
      (shown) => say`Die Liste noch einmal mit dem Motor vergleichen und ${shown.steps.marks.note} drücken.`,
    ],
    troubles: [
      {
        when: 'Ein Kennzeichen wird abgewiesen.',
        then: 'Dieser Motor hat kein solches. Bei besserem Licht noch einmal ansehen; Buchstaben und Ziffern werden leicht verwechselt.',
      },
      {
        when: 'Ein Kennzeichen ist nicht zu lesen.',
        then: 'Als unleserlich lassen und diese Bohrung oder diesen Zapfen bei der Wahl der Schalen messen.',
      },
    ],
  },
  shells: {
    title: 'Schalen wählen',
    whatFor: 'Eine Schale für jede Hälfte jedes Lagers, mit dem Lagerspiel, das sie ergibt.',
    how: [
      'Jedes Lager der Liste ansehen: Kennzeichen, Schalen, Spiel.',
      'Ein Lager antippen: warum diese Schalen vorgeschlagen sind und welche anderen Paare erlaubt sind.',
      (shown) =>
        say`${shown.shells.countTray} wählt unter den vorhandenen Schalen, über alle Lager zugleich.`,
      (shown) => say`${shown.shells.orderAndLabels} druckt, was zu bestellen ist, und Etiketten.`,
      (shown) => say`${shown.shells.take} drücken, sobald jedes Lager ein Paar in seinen Grenzen hat.`,
    ],
    troubles: [
      {
        when: 'Es wird keine Schale vorgeschlagen.',
        then: 'Ein Kennzeichen oder Messwert fehlt, oder nichts im Datenblatt passt. Das Lager antippen: Es sagt, was, und was zu messen ist.',
      },
      {
        when: 'Kennzeichen und Messwert weichen ab.',
        then: 'Noch einmal messen. Dann entscheiden, was gilt; die Begründung kommt auf das Blatt.',
      },
      {
        when: 'Die Kurbelwelle wurde geschliffen.',
        then: 'Das Untermaß am Zapfen angeben und messen: Schalen eines anderen Untermaßes fressen oder klopfen.',
      },
    ],
  },
  measuring: {
    title: 'Bohrungen und Zapfen messen',
    whatFor:
      'Ein Maß vom Messgerät, wo ein Kennzeichen unleserlich, die Kurbelwelle geschliffen oder das Gehäuse nicht neu ist.',
    how: [
      (shown) =>
        say`${shown.shells.measuring.parts.housing} oder ${shown.shells.measuring.parts.journal} wählen.`,
      'Vor dem Messen einer Bohrung den Deckel ohne Schalen anziehen, wie es das Handbuch sagt.',
      'In jeder Ebene und Richtung des Bildes messen; den Wert eingeben oder vom Messgerät senden.',
      'Angeben, wie warm Teil und Messgerät sind und wie weit es abweichen darf, sofern bekannt.',
      (shown) => say`${shown.shells.measuring.noteReadings} drücken.`,
    ],
    troubles: [
      {
        when: 'Ein Messwert liegt weit von den anderen.',
        then: 'Das Programm zeigt darauf. Die Stelle reinigen und noch einmal messen.',
      },
      {
        when: 'Die Stelle ist unrund oder konisch.',
        then: 'Keine Schale gleicht das aus. Dem Handbuch folgen: schleifen, bohren oder ein anderes Teil.',
      },
    ],
  },
  'fit-shells': {
    title: 'Schalen einlegen',
    whatFor: 'Jede Schale kommt in ihre eigene Hälfte; die Zeichnung hakt sie einzeln ab.',
    how: [
      'Die angezeigte Schale nehmen. Buchstabe, Farbe und Maß auf ihrem Rücken vergleichen.',
      'Rücken und Bohrung sauber und trocken wischen.',
      (shown) => say`Mit den Daumen eindrücken. ${shown.steps.fitShells.seating}`,
      'Die große Taste für diese Hälfte drücken, dann die nächste nehmen.',
    ],
    troubles: [
      {
        when: 'Die Ölbohrung liegt nicht über dem Ölkanal.',
        then: 'Es ist die falsche Hälfte, oder sie liegt verkehrt. Eine verdeckte Bohrung lässt das Lager trockenlaufen.',
      },
      {
        when: 'Eine Schale kam in die falsche Hälfte.',
        then: 'Diese Hälfte antippen und herausnehmen; die Begründung wird aufgezeichnet.',
      },
    ],
  },
  'fit-part': {
    title: 'Ein Teil einbauen',
    whatFor: 'Ein Teil, das hineinkommt: die Kurbelwelle, ein Wellendichtring, die andere Gehäusehälfte.',
    how: [
      'Die Warnungen über der Arbeit lesen.',
      'Tun, was der Schritt sagt, von Hand oder mit dem Hebezeug.',
      (shown) => say`Unter ${shown.partsList.title} angeben, ob die Teile neu oder wiederverwendet sind.`,
      (shown) => say`${shown.steps.fitPart.isIn} drücken.`,
    ],
    troubles: [
      {
        when: 'Es muss wieder heraus.',
        then: (shown) =>
          say`${shown.steps.fitPart.takeOutAgain} drücken und begründen. Was darauf aufbaut, ist vorher zurückzunehmen.`,
      },
      {
        when: 'Ein neues Teil ist verlangt, und es gibt keines.',
        then: 'Darauf warten. Ein wiederverwendetes Einmalteil steht mit seiner Begründung auf dem Blatt.',
      },
    ],
  },
  placed: {
    title: 'Arbeit Stelle für Stelle',
    whatFor:
      'Ölen, reinigen, Teile richtig herum setzen, Markierungen einstellen, Teile einsetzen: eine Stelle nach der anderen.',
    how: [
      'Zeichnung und Bild zeigen die nächste Stelle.',
      'Die Arbeit dort tun, und nur dort.',
      'Noch einmal hinsehen, dann die große Taste drücken.',
      (shown) => say`${shown.placed.places} zeigt, was erledigt ist und was noch fehlt.`,
    ],
    troubles: [
      {
        when: 'Eine Stelle wurde bestätigt und nicht erledigt.',
        then: (shown) => say`${shown.placed.undo} drücken, die Stelle wählen und noch einmal tun.`,
      },
      {
        when: 'Das Teil liegt verkehrt herum.',
        then: 'Herausnehmen und drehen. Ein verkehrter Kolben, Deckel oder Dichtring wird später nicht mehr bemerkt.',
      },
    ],
  },
  bead: {
    title: 'Eine Dichtraupe legen',
    whatFor: 'Dichtmittel entlang seines Verlaufs auf der Trennfläche, und die Uhr seiner Offenzeit.',
    how: [
      'Zuerst alles zum Schließen der Verbindung griffbereit legen.',
      'Beide Flächen reinigen und trocknen lassen.',
      'Die Raupe entlang des gezeichneten Verlaufs legen, nicht breiter als verlangt, um die Löcher wie gezeichnet.',
      (shown) => say`${shown.steps.bead.laid} drücken, sobald sie liegt.`,
      'Schließen und anziehen, bevor die Uhr abgelaufen ist.',
    ],
    troubles: [
      {
        when: 'Dichtmittel kam in einen Ölkanal.',
        then: 'Alles abwischen und neu beginnen. Es lässt ein Lager trockenlaufen.',
      },
      {
        when: 'Die Offenzeit ist vorbei.',
        then: (shown) =>
          say`Zerlegen, reinigen und ${shown.steps.bead.wipeOff} drücken. Dann eine neue Raupe legen.`,
      },
    ],
  },
  check: {
    title: 'Prüfungen',
    whatFor: 'Eine Frage, die am Motor beantwortet wird, mit Messwert, wo einer verlangt ist.',
    how: [
      'Prüfen, wie der Schritt es sagt.',
      'Den Wert eingeben, solange das Messgerät noch sitzt, oder von dort senden.',
      (shown) => say`${shown.steps.check.isGood} oder ${shown.steps.check.noteReading} drücken.`,
    ],
    troubles: [
      {
        when: 'Es ist nicht in Ordnung.',
        then: (shown) =>
          say`${shown.steps.check.isNotGood} drücken und sagen, was nicht stimmt. Beheben, angeben was getan wurde, neu antworten.`,
      },
      {
        when: 'Das Axialspiel liegt außerhalb der Grenzen.',
        then: 'Angezeigt wird, welche Anlaufscheiben passen, wenn das Datenblatt eine Tabelle hat.',
      },
    ],
  },
  limits: {
    title: 'Messen gegen Grenzen',
    whatFor: 'Maße, die in den Grenzen des Handbuchs liegen müssen: für neue und für wiederverwendete Teile.',
    how: [
      'Das Bild ansehen: Es zeigt, wo das Messgerät ansetzt.',
      'Die nächste Stelle messen; den Wert eingeben oder senden.',
      (shown) => say`${shown.limits.note} drücken.`,
      (shown) => say`${shown.limits.places} zeigt jeden Messwert und was noch fehlt.`,
    ],
    troubles: [
      {
        when: 'Ein Messwert liegt außerhalb der Grenzen.',
        then: (shown) =>
          say`Zuerst noch einmal messen. Dann ein anderes Teil nehmen und ${shown.limits.replace} drücken; ${shown.limits.accept} ist für das, was das Handbuch zulässt.`,
      },
    ],
  },
  rings: {
    title: 'Kolbenringe',
    whatFor: 'Das Stoßspiel jedes Rings in seiner Bohrung, und wo die Stöße am Kolben stehen.',
    how: [
      'Den Ring mit einem Kolben in seine Bohrung schieben, damit er gerade liegt, und das Stoßspiel messen.',
      'Ring und Bohrung von da an zusammenlassen.',
      'Die Ringe in der angezeigten Reihenfolge und mit der angezeigten Seite nach oben aufziehen.',
      'Jeden Stoß auf seinen Platz der Uhr drehen, mit Blick auf den Kolbenboden, Steuerseite links.',
      (shown) => say`${shown.rings.confirm} drücken.`,
    ],
    troubles: [
      {
        when: 'Ein Stoßspiel ist zu klein.',
        then: 'Die Enden gerade feilen oder einen anderen Ring nehmen. Ein Ring ohne Spiel frisst, darum wird er nie angenommen.',
      },
      {
        when: 'Zwei Stöße stehen übereinander.',
        then: 'Das Programm sagt es. Einen drehen: Gas geht geradewegs durch Stöße in einer Linie.',
      },
    ],
  },
  turning: {
    title: 'Die Kurbelwelle durchdrehen',
    whatFor: 'Was das Durchdrehen braucht, sagt, ob ein Lager klemmt, bevor das nächste Teil es verdeckt.',
    how: [
      (shown) => say`${shown.turning.manualFirst}`,
      'Hände weg von Pleueln und Gegengewichten.',
      (shown) =>
        say`Mit ${shown.turning.byWrench} oder ${shown.turning.byBalance} messen und eingeben, was angezeigt wird.`,
      (shown) => say`${shown.turning.note} drücken; ohne Grenzen ${shown.turning.turnsFreely}.`,
    ],
    troubles: [
      {
        when: 'Es braucht zu viel oder klemmt an einer Stelle.',
        then: 'Einen Deckel nach dem anderen lösen und jedes Mal drehen. Den, der sie freigibt, ansehen: Schalen, Öl, Nummer und Richtung des Deckels.',
      },
      {
        when: 'Nach einem Deckel braucht es mehr als davor.',
        then: 'Dort aufhören. Die Ursache liegt an diesem Deckel, nicht an den vorigen.',
      },
    ],
  },
  photo: {
    title: 'Fotos und Notizen',
    whatFor: 'Ein Bild oder ein Satz von dem, was nach dem Schließen nicht mehr zu sehen ist.',
    how: [
      (shown) =>
        say`${shown.photos.fromCamera} oder ${shown.photos.fromFile} drücken, oder ein Bild einfügen.`,
      'Die Kamera so halten, dass das Teil das Bild füllt, bei gutem Licht.',
      (shown) => say`Eine Bildunterschrift schreiben und ${shown.photos.add.add} drücken.`,
      (shown) => say`${shown.photos.writeNote} fügt stattdessen einen Satz hinzu.`,
    ],
    troubles: [
      {
        when: 'Es gibt keine Kamera.',
        then: (shown) =>
          say`Mit einem Telefon fotografieren und die Datei hinzufügen, oder ${shown.photos.skip} drücken und begründen.`,
      },
      {
        when: 'Das Bild ist unscharf.',
        then: 'Ein neues machen, bevor das Teil verdeckt ist. Beide bleiben in der Aufzeichnung.',
      },
      {
        when: 'Ein Foto zeigt, was es nicht zeigen soll.',
        then: (shown) =>
          say`Antippen, ${shown.photos.withdraw} drücken und begründen. Es wird nicht mehr gezeigt, gedruckt oder exportiert; die Begründung bleibt auf dem Montageblatt.`,
      },
    ],
  },
  count: {
    title: 'Teile zählen',
    whatFor: 'Vor dem Ende ist jedes Teil der Liste im Motor, oder es ist gesagt, wo es ist.',
    how: [
      'In jedem Behälter und unter der Werkbank nachsehen.',
      'Die nicht abgehakten Teile durchgehen. Was eingebaut ist, wird hier abgehakt.',
      (shown) =>
        say`Bei einem Teil, das nicht im Motor ist, sagen, wo es ist, und ${shown.partsList.count.noteLeftOver} drücken.`,
      (shown) => say`${shown.partsList.count.done} drücken.`,
    ],
    troubles: [
      {
        when: 'Ein Teil ist übrig, und niemand weiß warum.',
        then: 'Nicht abschließen. Seinen Schritt in der Liste suchen und nachsehen, ob es im Motor ist.',
      },
    ],
  },
}
