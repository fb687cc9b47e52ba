import { say, type TopicsOf } from '../../help/help-words.ts'

/** What belongs to the bench: people, tools, settings, the record, practice. */
export const bench: TopicsOf<'bench'> = {
  people: {
    title: (shown) => shown.people.title,
    whatFor: 'Wer hier arbeitet. Der Name an der Werkbank steht bei jedem Eintrag.',
    how: [
      'Jede Person hinzufügen, mit dem Namen für das Blatt und der Rolle.',
      'Eine PIN vergeben, damit niemand unter fremdem Namen etwas einträgt.',
      (shown) =>
        say`${shown.people.form.teachBadge} drücken und einen Ausweis vorhalten, dessen Leser tippt.`,
      'Im Aufbau den Namen im Schriftfeld antippen, um zu wechseln, wer an der Werkbank ist.',
    ],
    troubles: [
      {
        when: 'Die Liste lässt sich nicht ändern.',
        then: 'Wer sie ändert, muss als Mechaniker mit PIN in der Liste stehen und gewählt sein.',
      },
      {
        when: 'Ein Ausweis gilt als Messwert.',
        then: 'Er tippt eine Zahl. Zuerst den Namen antippen, dann den Ausweis vorhalten.',
      },
    ],
  },
  'second-person': {
    title: 'Zweite Person',
    whatFor:
      'Im Aufbau durch Auszubildende warten bestimmte Schritte, bis ein Mechaniker der Liste sie geprüft hat; was das Motordatenblatt so verlangt, wartet in jedem Aufbau.',
    how: [
      'Wer prüft, geht zum Motor und sieht an, was angezeigt ist.',
      'Dann den eigenen Namen wählen und die PIN eingeben oder den Ausweis vorhalten.',
      'Bestätigen oder den Schritt mit Begründung zurückgeben.',
    ],
    troubles: [
      {
        when: 'Ein Name lässt sich nicht wählen.',
        then: 'Diese Person hat an dem Schritt gearbeitet. Jemand anderes muss hinsehen.',
      },
      {
        when: 'Der Schritt kam zurück.',
        then: (shown) => say`Die Begründung lesen, ${shown.people.second.again} drücken und es richten.`,
      },
      {
        when: 'Ein Schritt wartet, obwohl hier niemand in Ausbildung arbeitet.',
        then: 'Das Motordatenblatt verlangt es in jedem Aufbau. Ein Mechaniker der Liste, der nicht daran gearbeitet hat, prüft ihn.',
      },
    ],
  },
  library: {
    title: (shown) => shown.library.title,
    whatFor:
      'Die Motordatenblätter dieser Werkstatt: von wem eingegeben und geprüft, und welche Aufbauten darauf beruhen.',
    how: [
      (shown) => say`${shown.library.begin.title} drücken, um nach Bauart und wenigen Maßen anzufangen.`,
      (shown) => say`Oder einen Motor wählen und ${shown.library.copy} drücken: dann jeden Wert ersetzen.`,
      (shown) =>
        say`${shown.library.drafts.show} nennt, was fehlt oder falsch ist, jeweils mit seiner Stelle.`,
      (shown) =>
        say`${shown.library.drafts.publish} stellt es für Aufbauten bereit. Danach wird es nie mehr geändert.`,
      (shown) =>
        say`${shown.library.save} macht eine Datei für eine andere Werkstatt; eine solche auf der Seite ablegen, um sie zu übernehmen.`,
    ],
    troubles: [
      {
        when: 'Ein Entwurf lässt sich nicht freigeben.',
        then: 'Die Prüfung findet einen Fehler darin. Zuerst beheben, was sie sagt.',
      },
      {
        when: 'Ein freigegebener Wert ist falsch.',
        then: (shown) =>
          say`Den Motor wählen und ${shown.library.revise} drücken. Begonnene Aufbauten behalten ihre Revision.`,
      },
      {
        when: 'Ein Aufbau geht nach einer Revision, zu der es eine neuere gibt.',
        then: (shown) =>
          say`Sein Fenster sagt es: ${shown.revision.look} zeigt, was anders ist und was beim Übernehmen wieder offen wird.`,
      },
      {
        when: 'Ein Entwurf wurde versehentlich verworfen.',
        then: (shown) => say`${shown.library.drafts.bringBack} oben auf der Seite drücken.`,
      },
    ],
  },
  editor: {
    title: 'Ein Motordatenblatt schreiben',
    whatFor:
      'Ein Motor wird aus seinem Handbuch eingegeben: gezeichnet, dann Schrauben, Durchgänge, Lager, Schritte und Teile. Jede Änderung steht sofort auf dem Datenträger.',
    how: [
      (shown) =>
        say`Auf der Zeichnung setzen, was die Teile zusammenhält, dann ${shown.editor.actions.order}: die Anzugsreihenfolge des Handbuchs antippen.`,
      (shown) =>
        say`${shown.editor.actions.picture} legt die Zeichnung des Handbuchs oder ein Foto unter die Zeichnung, ausgerichtet nach zwei bekannten Punkten. Es bleibt an dieser Werkbank.`,
      (shown) =>
        say`${shown.editor.sections.groups}, ${shown.editor.sections.passes}, ${shown.editor.sections.fits}, ${shown.editor.sections.steps} und ${shown.editor.sections.parts} durchgehen. Jeden Wert eingeben, wie das Handbuch ihn druckt, in beiden Einheiten, wo es beide druckt: 30 lbf·ft (41 N·m).`,
      (shown) =>
        say`Zu jedem Teil ${shown.editor.pages.page} angeben: sie steht beim Gegenlesen neben seinen Werten.`,
      (shown) =>
        say`Unter ${shown.editor.sections.audit} jeden Fehler beheben. Ein Zweifel, der so richtig ist: ${shown.editor.audit.accept}`,
      (shown) =>
        say`Eine zweite Person den eigenen Namen wählen und ${shown.editor.sections.check} durchgehen lassen. Ein geänderter Wert wird neu verglichen.`,
      'Strg+Z nimmt zurück, was gerade im Feld eingegeben wird, sonst die letzte Änderung, auch nach einem Neustart. Tab geht von Feld zu Feld, die Eingabetaste übernimmt.',
    ],
    troubles: [
      {
        when: 'Ein Wert wird nicht angenommen.',
        then: 'Die Zeile unter dem Feld sagt, warum. Das Getippte bleibt stehen; geändert ist nichts.',
      },
      {
        when: 'Ein Schritt lässt sich nicht entfernen.',
        then: 'In ihm wird ein Teil eingebaut, oder eine Warnung steht allein neben ihm. Zuerst das ändern.',
      },
      {
        when: 'Ein angenommener Zweifel ist wieder da.',
        then: 'Worum es geht, hat sich geändert. Noch einmal ansehen.',
      },
    ],
  },
  wrenches: {
    title: (shown) => shown.wrenches.title,
    whatFor: 'Die Drehmomentschlüssel der Werkstatt. Für jedes Anziehen wird ein geeigneter gewählt.',
    how: [
      (shown) => say`${shown.wrenches.add} drücken.`,
      'Name und Nummer eingeben, dazu kleinsten und größten Skalenwert.',
      'Den Tag der Kalibrierung eingeben, dazu Typ und Klasse, wie sie darauf stehen.',
      'Für Adapter, die die Schraube vom Abtrieb wegrücken, Länge des Schlüssels und Stichmaß eingeben.',
      (shown) => say`${shown.wrenches.form.keep} drücken.`,
    ],
    troubles: [
      {
        when: 'Kein Schlüssel passt.',
        then: (shown) =>
          say`${shown.run.wrench.offer} im Schritt sagt, warum keiner geht: Bereich, Teilung, Klasse oder Adapter.`,
      },
      {
        when: 'Die Einstellung ist ein anderer Wert als das Drehmoment der Schraube.',
        then: 'Mit Adapter ist das richtig: Angezeigt wird, was einzustellen ist. Den Adapter im angegebenen Winkel halten.',
      },
    ],
  },
  instruments: {
    title: (shown) => shown.instruments.title,
    whatFor: 'Messgeräte und Schlüssel, die ihre Werte senden, und Ansagen.',
    how: [
      'Ein Messgerät, das wie eine Tastatur tippt, braucht keine Einstellung: seine Taste drücken, wenn ein Wert verlangt ist.',
      (shown) =>
        say`Für eines mit serieller Schnittstelle ${shown.instruments.add} drücken und seine Einstellungen aus seinem Handbuch übernehmen.`,
      (shown) => say`${shown.instruments.connect} drücken und die Schnittstelle wählen.`,
      'Einen Wert senden und mit der Anzeige vergleichen.',
      'Die Stimme einschalten und ihr Tempo wählen.',
    ],
    troubles: [
      {
        when: 'Was kommt, ist kein Messwert.',
        then: 'Geschwindigkeit, Datenbits, Parität und Stoppbits mit dem Handbuch des Geräts vergleichen.',
      },
      {
        when: 'Ein Wert kam, als keiner verlangt war.',
        then: (shown) => say`Er wird aufgehoben: ${shown.run.unasked.use} oder ${shown.run.unasked.drop}.`,
      },
    ],
  },
  'screen-and-keys': {
    title: (shown) => shown.settings.title,
    whatFor: 'Zahlen in ihrer wahren Größe auf diesem Bildschirm, und die Tasten.',
    how: [
      'Eine Bankkarte an den Umriss halten und den Umriss gleich groß machen.',
      (shown) => say`${shown.settings.asLargeAsCard} drücken.`,
      (shown) =>
        say`Auf der ersten Seite ${shown.settings.readFrom} wählen: einen halben Meter, einen oder zwei.`,
      (shown) => say`${shown.settings.letterKeys} ausschalten, wo sie versehentlich gedrückt werden.`,
    ],
    troubles: [
      {
        when: 'Zahlen sind zu klein oder zu groß.',
        then: 'Den Bildschirm neu messen; der Zoom des Browsers zählt mit, ihn zuerst auf 100 % stellen.',
      },
      {
        when: 'Eine Taste tut nichts.',
        then: 'Während ein Text getippt wird, gehören Tasten zum Text. Zuerst Esc drücken.',
      },
    ],
  },
  record: {
    title: (shown) => shown.engines.record,
    whatFor: 'Ob alle Einträge sind, wie sie bestätigt wurden, und Kopien davon.',
    how: [
      (shown) =>
        say`Einen zweiten Ordner auf einem anderen Datenträger wählen und ${shown.record.backup.keepThere} drücken.`,
      (shown) => say`${shown.record.backup.make} macht sofort eine Kopie; täglich entsteht eine von selbst.`,
      (shown) => say`${shown.record.verify.whole} prüft jeden Eintrag.`,
      'Den Kopfcode eines alten Blatts eingeben, um zu sehen, ob die Aufzeichnung noch dazu passt.',
      (shown) => say`${shown.record.doctor} vorlesen, wenn jemand am Telefon hilft.`,
    ],
    troubles: [
      {
        when: 'Etwas ist nicht wie bestätigt.',
        then: 'Die Seite sagt, welcher Eintrag. Die Aufzeichnung lassen, wie sie ist, und mit Sicherung oder Blatt vergleichen.',
      },
      {
        when: 'Eine Sicherung soll eingesetzt werden.',
        then: 'Sie wählen und wiederherstellen. Was vorher da war, bleibt daneben erhalten.',
      },
    ],
  },
  shop: {
    title: (shown) => shown.shop.title,
    whatFor:
      'Mehrere Werkbänke mit einem Archiv: jede findet, liest und druckt jeden Aufbau, und eine zur Zeit arbeitet daran.',
    how: [
      (shown) =>
        say`Der Werkbank einen Namen geben, die Adresse des Archivs eintragen und ${shown.shop.join.join} drücken.`,
      'Weiterarbeiten wie bisher: Bestätigtes liegt zuerst auf dieser Werkbank und kommt von selbst ins Archiv.',
      (shown) => say`${shown.shop.build.handOver} im Fenster eines Aufbaus gibt ihn einer anderen Werkbank.`,
      (shown) =>
        say`${shown.shop.build.takeOver} setzt einen fort, dessen Werkbank ausgefallen ist; dazu gehört eine Begründung.`,
      (shown) =>
        say`${shown.archive.title} findet die Aufbauten aller Werkbänke, auch nach ${shown.shop.bench}; ${shown.archive.search.states.forked} sind die zu entscheidenden.`,
      (shown) => say`${shown.shop.wall.open} zeigt jeden offenen Aufbau in Schrift, die aus 3 m lesbar ist.`,
    ],
    troubles: [
      {
        when: 'Das Netz ist ausgefallen.',
        then: 'Weiterarbeiten. Was wartet, steht auf der Seite und wird übertragen, sobald das Archiv wieder antwortet.',
      },
      {
        when: 'Ein Aufbau wurde an zwei Werkbänken getrennt fortgesetzt.',
        then: (shown) =>
          say`Feststellen, was davon am Motor getan wurde. An einer der beiden Werkbänke den Aufbau öffnen, ${shown.shop.apart.look} drücken und entscheiden, welche Folge zählt.`,
      },
    ],
  },
  'damaged-record': {
    title: 'Wenn die Aufzeichnung beschädigt ist',
    whatFor: 'Auf eine Aufzeichnung, der nicht zu trauen ist, wird nicht gebaut. Nichts wird weggeworfen.',
    how: [
      'Oben lesen, was nicht stimmt. Keine Datei löschen.',
      (shown) => say`Einen fehlenden Datenträger anschließen und ${shown.record.rescue.lookAgain} drücken.`,
      'Sonst die neueste geprüfte Sicherung wählen und wiederherstellen.',
      'Den letzten Aufbau mit seinem Blatt vergleichen: Was nach der Sicherung bestätigt wurde, ist neu einzugeben.',
    ],
    troubles: [
      {
        when: 'Es gibt keine Sicherung.',
        then: 'Im zweiten Ordner und auf anderen Datenträgern suchen. Den ganzen Datenordner kopieren, bevor etwas versucht wird.',
      },
      {
        when: 'Die Aufzeichnung verschwand, während das Programm lief.',
        then: (shown) =>
          say`Sie ist noch im Speicher: ${shown.record.rescue.write} drücken, bevor das Programm geschlossen wird.`,
      },
    ],
  },
  practice: {
    title: (shown) => shown.practice.title,
    whatFor: 'Übungen an den Motoren der Bibliothek, fern von jedem Aufbau, etwa zehn Minuten am Tag.',
    how: [
      'Wählen, wer an der Werkbank ist, damit der Fortschritt behalten wird.',
      (shown) => say`Mit ${shown.practice.today} beginnen: Jede Übung kommt wieder, wenn sie fällig ist.`,
      'Fehler werden an ihrer Stelle auf der Zeichnung gezeigt.',
      (shown) =>
        say`${shown.practice.dryRun.name} ist ein ganzer Aufbau auf den echten Seiten. Nichts davon wird aufgezeichnet.`,
    ],
    troubles: [
      {
        when: 'Nichts wird behalten.',
        then: (shown) => say`Der Name an der Werkbank steht nicht unter ${shown.engines.people}.`,
      },
    ],
  },
}
