import { say, type TopicsOf } from '../../help/help-words.ts'

/** Tightening procedures. */
export const tightening: TopicsOf<'tightening'> = {
  run: {
    title: 'Anziehen',
    whatFor:
      'Ein Anziehvorgang führt durch seine Durchgänge, Schraube für Schraube, in der Reihenfolge des Handbuchs.',
    how: [
      'Den Schlüssel auf den Wert stellen, der für diesen Schlüssel angezeigt wird.',
      'Die blaue Schraube der Zeichnung an ihrer Nummer suchen und den Schlüssel aufsetzen.',
      'Gleichmäßig ziehen, bis er auslöst oder der Wert erreicht ist; nicht reißen, nicht zweimal auslösen.',
      'Den Messwert eingeben, wenn der Schlüssel einen zeigt, dann die große Taste drücken.',
      (shown) =>
        say`${shown.run.pause} behält die Stelle; ${shown.run.problem} vermerkt, was an einer Schraube nicht stimmt.`,
      (shown) => say`${shown.run.explained.offer} zeigt, was der Wert mit der Schraube macht.`,
    ],
    troubles: [
      {
        when: 'Die Taste wurde gedrückt und nichts angezogen.',
        then: 'Die Rücktaste drücken oder den letzten Anzug antippen und mit Begründung zurücknehmen. Dann anziehen.',
      },
      {
        when: 'Die nächste Schraube ist nicht erreichbar.',
        then: 'Die antippen, die in diesem Durchgang angezogen werden kann, und begründen. Danach geht es in der Reihenfolge weiter.',
      },
      {
        when: 'Ein Messwert liegt außerhalb seiner Grenzen.',
        then: 'Er wird beanstandet. Siehe „Beanstandungen“: niemals nach Gefühl nachziehen.',
      },
    ],
  },
  angle: {
    title: 'Nach Drehwinkel anziehen',
    whatFor: 'Nach dem Drehmoment wird um einen Drehwinkel weitergedreht, damit die Reibung weniger zählt.',
    how: [
      'Den Kopf markieren oder eine Winkelscheibe aufsetzen. Die Zeichnung zeigt, wo der Griff beginnt und wo er ankommt.',
      'Den Griff auf der Zeichnung dorthin bewegen, wo der eigene steht: ziehen oder ← und → drücken.',
      (shown) =>
        say`Unter ${shown.run.angle.room} angeben, wie weit er schwenken kann; die Hübe werden dann gezählt.`,
      'In einem Zug drehen, wo Platz ist, ohne nachzugeben.',
      'Den erreichten Winkel eingeben oder die große Taste drücken.',
    ],
    troubles: [
      {
        when: 'Es wurde zu wenig gedreht.',
        then: 'Der Rest bleibt offen und wird als Nächstes verlangt. Von dort weiterdrehen, nie von vorn.',
      },
      {
        when: 'Es wurde zu weit gedreht.',
        then: 'Die Schraube kann über ihrer Streckgrenze sein. Der Anzeige folgen: ersetzen oder vom ersten Durchgang an neu beginnen.',
      },
      {
        when: 'Niemand weiß, wie weit gedreht wurde.',
        then: 'Lösen und neu beginnen; eine Schraube, die nur einmal verwendet werden darf, ersetzen.',
      },
    ],
  },
  stretch: {
    title: 'Anziehen nach Längung',
    whatFor:
      'Die Länge der Schraube vorher und nachher sagt, wie stark sie belastet ist, wie auch immer die Reibung ist.',
    how: [
      'Jede Schraube vor dem Einsetzen messen, immer an denselben Punkten, und ihre Länge eingeben.',
      'Auf das Drehmoment anziehen, mit dem der Durchgang beginnt.',
      'Wieder messen: Angezeigt wird, um wie viel sie länger sein muss.',
      'In kleinen Schritten weiterziehen und jede Länge eingeben, bis sie lang genug ist.',
    ],
    troubles: [
      {
        when: 'Sie ist länger als das Höchste.',
        then: 'Sie wird ersetzt. Zurückdrehen macht die Längung nicht ungeschehen.',
      },
      {
        when: 'Die Längen springen.',
        then: 'Die Enden reinigen, Schraube und Messgerät auf gleiche Temperatur kommen lassen, dreimal messen.',
      },
    ],
  },
  flags: {
    title: 'Beanstandungen',
    whatFor:
      'Was außerhalb der Grenzen lag oder als falsch vermerkt wurde, bleibt beanstandet, bis gesagt ist, was getan wurde.',
    how: [
      'Die Beanstandung lesen: welche Schraube, welcher Durchgang, welcher Messwert.',
      'Schraube und Auflage ansehen, bevor etwas gedreht wird.',
      (shown) => say`War der Messwert falsch, neu ablesen: ${shown.run.readAgain.offer}`,
      (shown) => say`Wo es angeboten wird, ${shown.run.loosen.offer} drücken.`,
      (shown) => say`Tun, was entschieden wurde, und unter ${shown.run.flag.whatWasDone} eingeben.`,
      (shown) => say`${shown.run.flag.note} drücken.`,
    ],
    troubles: [
      {
        when: 'Der Höchstwert wurde überschritten.',
        then: 'Worte machen das nicht gut. Sie wird ersetzt, neu begonnen oder weitergedreht, wie es angeboten wird.',
      },
      {
        when: 'Jetzt ist keine Zeit dafür.',
        then: 'Die Antwort kann später kommen. Der Anziehvorgang bleibt bis dahin offen.',
      },
    ],
  },
  'own-order': {
    title: (shown) => shown.order.own.title,
    whatFor:
      'Ausnahmsweise eine andere Reihenfolge als die des Herstellers, mit Begründung. Die des Herstellers geht vor.',
    how: [
      (shown) => say`Bevor der Anziehvorgang beginnt, ${shown.order.own.title} öffnen.`,
      'Die Schrauben nacheinander antippen oder ihre Nummern eingeben.',
      (shown) => say`${shown.order.own.compare} zeigt, was die Reihenfolge mit der Klemmkraft macht.`,
      (shown) => say`${shown.run.confirm.useOrder} drücken und begründen.`,
    ],
    troubles: [
      {
        when: 'Eine Schraube fehlt in der Reihenfolge.',
        then: 'Der Beginn wartet, bis jede einmal genannt ist.',
      },
      {
        when: 'Die Reihenfolge soll mittendrin geändert werden.',
        then: 'Sie gilt bis zum Ende. Den Anziehvorgang neu beginnen, oder einzelne Schrauben mit Begründung vorziehen.',
      },
    ],
  },
}
