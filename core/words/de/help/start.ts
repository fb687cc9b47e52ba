import { say, type TopicsOf } from '../../help/help-words.ts'

/** The first page, and what is the same in every step. */
export const start: TopicsOf<'start'> = {
  engines: {
    title: (shown) => shown.parts.enginesAndBuilds,
    whatFor:
      'Die erste Seite: Aufbauten zum Weiterarbeiten, Motoren zum Beginnen und die Wege zu allen anderen Seiten.',
    how: [
      (shown) =>
        say`Unter ${shown.engines.onTheBench} einen Aufbau antippen, um weiterzuarbeiten. Er öffnet sich, wo er verlassen wurde.`,
      (shown) => say`Unter ${shown.engines.startOn} einen Motor antippen, um einen neuen Aufbau zu beginnen.`,
      (shown) => say`Abgeschlossene und ältere Aufbauten stehen unter ${shown.archive.title}.`,
      'Sprache, Farben, Einheit des Drehmoments und Leseabstand werden oben auf der Seite eingestellt.',
    ],
    troubles: [
      {
        when: (shown) => say`Bei einem Motor steht ${shown.engines.cannotBeBuilt}`,
        then: 'Sein Datenblatt hat einen Fehler. Die Zeile sagt, welchen und wo; die Datei berichtigen und das Programm neu starten.',
      },
      {
        when: 'Der Motor fehlt in der Liste.',
        then: (shown) =>
          say`Ihn unter ${shown.library.title} nach dem Handbuch eingeben oder dort eine Datei mit seinem Datenblatt öffnen.`,
      },
      {
        when: 'Das Fenster ist in einer anderen Sprache.',
        then: 'Sie oben auf dieser Seite wählen. Sie wechselt sofort; was eingegeben wurde, bleibt, wie es eingegeben wurde.',
      },
    ],
  },
  'guided-build': {
    title: 'Geführter erster Aufbau',
    whatFor:
      'Ein Demo-Motor wird vom ersten Schritt an aufgebaut, mit einer kurzen Notiz zu jedem. Er kommt als Demo in die Aufzeichnung.',
    how: [
      (shown) =>
        say`${shown.engines.sample.beginGuided} drücken, hier oder, solange kein Aufbau begonnen ist, auf der ersten Seite.`,
      'Ein Motor ist nicht nötig: jeden Schritt am Bildschirm tun, mit Kennzeichen und Messwerten, die zulässig sind.',
      'Die Notiz unter der Zeichnung lesen. Sie lässt sich bis zum nächsten Schritt weglegen oder öffnet diese Hilfe bei ihrem Thema.',
      'Die Führung lässt sich in der Notiz jederzeit beenden; der Aufbau geht ohne Notizen weiter.',
    ],
    troubles: [
      {
        when: 'Die Notizen sind weg.',
        then: 'Sie stehen bei dem Aufbau, der zuletzt geführt wurde. Hier einen neuen beginnen; der frühere bleibt in der Aufzeichnung und lässt sich für ungültig erklären.',
      },
    ],
  },
  'start-build': {
    title: 'Einen Aufbau beginnen',
    whatFor:
      'Ein Aufbau ist ein Motor, der zusammengebaut wird. Alles Bestätigte kommt in seine Aufzeichnung.',
    how: [
      (shown) =>
        say`Unter ${shown.engines.startOn} den Motor antippen und seine Revision mit dem Handbuch vergleichen.`,
      (shown) => say`${shown.engines.buildName} eingeben: wie der Auftrag in der Werkstatt heißt.`,
      (shown) => say`Die Seriennummer eingeben, wie sie eingeschlagen ist, dazu ${shown.engines.person}.`,
      (shown) =>
        say`${shown.engines.apprentice} ankreuzen, wenn jemand anderes bestimmte Schritte ansehen soll.`,
      (shown) => say`${shown.engines.start} drücken.`,
    ],
    troubles: [
      {
        when: (shown) => say`Es gibt eine Zeile ${shown.engines.doubtful}`,
        then: 'Ein Aufbau ist möglich, aber etwas am Datenblatt sieht falsch aus. Diese Stelle zuerst mit dem Handbuch vergleichen.',
      },
      {
        when: 'Es ist ein Demo-Motor.',
        then: 'Seine Zahlen sind erfunden. Nie einen echten Motor danach aufbauen.',
      },
    ],
  },
  'build-window': {
    title: 'Das Fenster des Aufbaus',
    whatFor:
      'Ein Schritt nach dem anderen: links die Zeichnung, rechts was zu tun ist, eine große Taste zum Bestätigen.',
    how: [
      'Rechts von oben lesen: Was verletzen kann, steht zuerst.',
      'Die Arbeit am Motor tun. Dann die große Taste, die Eingabetaste, die Leertaste oder ein Fußpedal drücken.',
      'Ist ein Schritt erledigt, kommt der nächste von selbst.',
      (shown) =>
        say`${shown.buildWindow.allSteps} zeigt jeden Schritt; antippen, um ihn anzusehen oder zu wiederholen.`,
      'Der Name im Schriftfeld sagt, wer an der Werkbank ist. Antippen, wenn jemand anderes weitermacht.',
      (shown) => say`${shown.buildWindow.benchView} zeigt nur das Nächste, groß genug für einige Meter.`,
    ],
    troubles: [
      {
        when: 'Die große Taste ist grau.',
        then: 'Rechts steht, welche Schritte vorher kommen oder warum der Aufbau nur gelesen werden kann.',
      },
      {
        when: 'Etwas wurde versehentlich bestätigt.',
        then: 'Zu seinem Schritt gehen. Dort wird es mit Begründung zurückgenommen; die Aufzeichnung behält beides.',
      },
    ],
  },
  'again-and-skip': {
    title: 'Einen Schritt wiederholen oder überspringen',
    whatFor:
      'Ein erledigter Schritt wird wieder geöffnet, mit allem, was auf ihm aufbaut; ein anderer wird mit Begründung übersprungen.',
    how: [
      (shown) =>
        say`${shown.buildWindow.allSteps} öffnen, den Schritt antippen und ${shown.plan.doAgain} drücken.`,
      'Lesen, welche Schritte mit ihm wieder offen sind, und am Motor zurückbauen, was die Liste sagt, in ihrer Reihenfolge.',
      (shown) =>
        say`${shown.plan.isUndone} ankreuzen, wo danach gefragt wird, begründen und ${shown.plan.againNow} drücken.`,
      (shown) =>
        say`Um einen Schritt zu überspringen, ${shown.plan.skip} drücken, begründen und ${shown.plan.skipIt} drücken.`,
      (shown) => say`${shown.plan.takeBackSkip} nimmt das zurück.`,
    ],
    troubles: [
      {
        when: 'Ein Schritt lässt sich nicht überspringen.',
        then: 'Das Motordatenblatt lässt es nicht zu. Er muss getan werden.',
      },
      {
        when: 'Nur ein Kennzeichen wurde falsch gelesen.',
        then: 'Den Schritt der Kennzeichen wiederholen. Was auf ihnen beruht, bleibt erledigt, solange sie sich nicht anders lesen.',
      },
      {
        when: 'Der Aufbau ist abgeschlossen.',
        then: (shown) =>
          say`Seine Arbeit lässt sich nicht mehr ändern. Was später getan wurde, unter ${shown.steps.afterwards.amend} angeben.`,
      },
    ],
  },
  drawing: {
    title: (shown) => shown.buildWindow.drawing,
    whatFor:
      'Die Trennfläche, wie sie auf der Werkbank liegt, das Nächste in Blau. Die Lage stimmt, nicht jeder Abstand.',
    how: [
      'Zuerst die Steuerseite auf der Zeichnung suchen und mit dem Motor vergleichen.',
      (shown) =>
        say`${shown.view.flip} zeigt die Fläche von der anderen Seite, ${shown.view.turn} dreht sie um ein Viertel.`,
      (shown) => say`Unter ${shown.view.open} angeben, wie der Motor liegt, und mehr oder weniger zeigen.`,
      'Etwas antippen, um zu lesen, was es ist. Eine Karte öffnet sich daneben.',
      'Mit + und −, Rad oder zwei Fingern vergrößern; Pos1 zeigt alles.',
      (shown) => say`${shown.view.inWords} listet dasselbe auf, für Tasten und Vorleseprogramme.`,
    ],
    troubles: [
      {
        when: 'Zeichnung und Motor passen nicht zusammen.',
        then: 'Nicht weitermachen. Wenden oder drehen, bis Steuerseite und Nummern passen; passen sie nie, ist es ein anderer Motor oder ein anderes Datenblatt.',
      },
    ],
  },
  interrupted: {
    title: 'Nach einer Unterbrechung',
    whatFor:
      'Was das Fenster als erledigt zeigt, ist gespeichert. Nach Anruf oder Stromausfall geht es an derselben Stelle weiter.',
    how: [
      'Das Programm öffnen. Es geht zu dem Aufbau, der offen lag.',
      'Die große Taste lesen: Sie nennt das Nächste.',
      'Die zuletzt bestätigte Schraube ansehen, auch am Motor.',
      'Ist nicht sicher, ob sie angezogen wurde, den letzten Anzug mit dieser Begründung zurücknehmen und wiederholen.',
    ],
    troubles: [
      {
        when: 'Niemand weiß, wie weit ein Winkel gedreht wurde.',
        then: 'Nicht raten. Diese Schraube lösen und vom ersten Durchgang an neu beginnen, wie es angezeigt wird.',
      },
      {
        when: 'Vor der Unterbrechung wurde Dichtmittel aufgetragen.',
        then: 'Seine Uhr lief weiter. Ist die Offenzeit vorbei: zerlegen, reinigen, eine neue Dichtraupe legen.',
      },
    ],
  },
}
