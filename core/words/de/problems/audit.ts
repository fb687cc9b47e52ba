import type { auditWords as pattern } from '../../en/problems/audit.ts'
import type { Table } from '../../table.ts'

type Facts<Code extends keyof typeof pattern> = Parameters<(typeof pattern)[Code]>[0]

const gaps = { 'end-float': 'Axialspiel', 'rod-side': 'Seitenspiel der Pleuel' }

const shellSteps = {
  'note-housing-marks': 'Bohrungskennzeichen notieren',
  'note-journal-marks': 'Zapfenkennzeichen notieren',
  'choose-shells': 'Lagerschalen wählen',
  'fit-shells': 'Lagerschalen einlegen',
}

function workIn(work: Facts<'done-in-two-steps'>['work']): string {
  switch (work.kind) {
    case 'note-marks':
      return `${shellSteps[`note-${work.part}-marks`]}, Lagerung „${work.fit}“`
    case 'choose-shells':
    case 'fit-shells':
      return `${shellSteps[work.kind]}, Lagerung „${work.fit}“`
    case 'lay-bead':
      return `Dichtraupe „${work.bead}“`
    case 'run-procedure':
      return `Anziehvorgang „${work.procedure}“`
  }
}

export const auditWords: Table<typeof pattern> = {
  'least-above-most': ({ place, least, most }) =>
    `${place}: Das Mindestmaß ${least} liegt über dem Höchstmaß ${most}. Eines davon ist ein Druck- oder Tippfehler.`,
  'target-outside-limits': (facts) =>
    `${facts.place}: Der Sollwert ${facts.target} liegt nicht in ${facts.least ?? '…'} bis ${facts.most ?? '…'}. Eines davon berichtigen.`,
  'service-limit-below-most': ({ fit, limit, most }) =>
    `${fit}: Die Verschleißgrenze ${limit} liegt unter dem Höchstwert für Neuteile, ${most}. Eines davon berichtigen.`,
  'washers-overlap': ({ first, second }) =>
    `Axialspiel: Die Anlaufscheiben „${first}“ und „${second}“ gelten beide für dasselbe Spiel. Berichtigen, wo eine beginnt.`,
  'washers-half-tabled': ({ washer }) =>
    `Axialspiel: Bei der Anlaufscheibe „${washer}“ fehlt Spiel von/bis, das andere oder ihr anderes Ende haben. Für alle beides angeben ` +
    'oder für keine: dann wird nach der Dicke gewählt.',
  'washers-mixed-tabled': (_) =>
    'Axialspiel: Die Anlaufscheiben dürfen verschieden sein, die Tabelle nennt aber beide gleich. Angeben, dass sie nie verschieden sind, oder die Tabelle weglassen.',
  'washer-misses-limits': (facts) =>
    `Axialspiel: Bei ${facts.floats} sind die Anlaufscheiben „${facts.washer}“ vorgesehen. Nach ihrer Dicke lassen sie ${facts.leaves}, wo vorher „` +
    `${facts.standard}“ lagen; zulässig ${facts.limits}. Dicke und Spiele der Zeile prüfen.`,
  'washer-thickness-twice': (facts) =>
    `Axialspiel: Die Anlaufscheiben „${facts.first}“ und „${facts.second}“ sind beide ${facts.thickness} dick. Eine berichtigen oder nur eine behalten.`,
  'washer-steps-wide': (facts) =>
    `Axialspiel: Von einem Scheibenpaar zum nächstdickeren ändert es sich um ${facts.step}, die Grenzen liegen nur ${facts.range} auseinander: ` +
    'Für manche Kurbelwelle passt kein Paar. Prüfen, ob eine Dicke fehlt oder ob die beiden Scheiben verschieden sein dürfen.',
  'limits-said-twice': (facts) =>
    `${facts.step}: Der Schritt lässt ${facts.here} zu, beim Motor steht für ${gaps[facts.gap]} ${facts.there}. ` +
    'Zwei Vorgaben für dasselbe: klären, welche gilt.',

  'saddles-out-of-order': ({ first, second }) =>
    `Lagersitz ${second} steht nach ${first}, liegt aber nicht dahinter. Lagersitze von der Steuerseite an aufführen.`,
  'bearings-overlap': ({ first, second, by }) =>
    `${first} und ${second} überschneiden sich längs der Kurbelwelle um ${by}. Lage oder Breite berichtigen.`,
  'bores-overlap': ({ bore, pitch }) =>
    `Zylinderbohrungen von ${bore} bei einem Abstand von ${pitch} laufen ineinander. Eines davon berichtigen.`,
  'rod-without-cylinder': ({ rod, cylinder, cylinders }) =>
    `Pleuel ${rod} gehört zu Zylinder ${cylinder}, der Motor hat ${cylinders}. Eines davon berichtigen.`,
  'cylinder-with-two-rods': ({ cylinder }) =>
    `Zylinder ${cylinder} hat zwei Pleuel. Bei einem den Zylinder berichtigen.`,
  'rods-missing': ({ rods, cylinders }) => `${rods} Pleuel für ${cylinders} Zylinder. Fehlende ergänzen.`,
  'outside-outline': ({ what, face, x, y }) =>
    `${what} bei ${x}, ${y} liegt außerhalb des Umrisses von „${face}“. Lage oder Umriss berichtigen.`,
  'far-outside': ({ what, face, x, y }) =>
    `${what} bei ${x}, ${y} liegt auf „${face}“ weit weg von allem anderen. Lage und Einheit prüfen.`,
  'parts-collide': ({ first, second, face }) =>
    `${face}: ${first} und ${second} überschneiden sich. Bei einem die Lage berichtigen.`,
  'outline-crosses-itself': ({ face }) =>
    `${face}: Der Umriss kreuzt sich selbst. Ecken der Reihe nach, einmal ringsum, angeben.`,
  'shank-not-waisted': ({ group, shank, thread }) =>
    `${group}: Ein Schaft von ${shank} bei Gewinde ${thread} ist nicht verjüngt oder für eine Schraube zu dünn. Berichtigen; ist der Schaft so dick ` +
    'wie das Gewinde, weglassen.',
  'prevailing-missing': ({ group }) =>
    `${group}: Angegeben ist, ob das Drehmoment das Klemmdrehmoment enthält, das Klemmdrehmoment selbst fehlt. Höchstwert beim Eindrehen ` +
    'angeben oder beides weglassen.',
  'prevailing-not-said': ({ group, torque }) =>
    `${group}: Klemmdrehmoment bis ${torque}; ob das Drehmoment es enthält, ist nicht angegeben. Nachschlagen und ` +
    'angeben; bis dahin wird nichts zugeschlagen.',
  'layers-not-grip': ({ group, layers, grip }) =>
    `${group}: Die Lagen ergeben zusammen ${layers}, die Klemmlänge ist ${grip}. Eines davon berichtigen.`,
  'head-smaller-than-thread': ({ group, acrossFlats, thread }) =>
    `${group}: Schlüsselweite ${acrossFlats} ist nicht größer als das Gewinde, ${thread}. Eines davon berichtigen.`,

  'rod-without-throw': ({ rod }) =>
    `Kurbelwelle: Pleuel ${rod} läuft auf keiner Kröpfung. Bei der Kröpfung nennen, die es trägt.`,
  'rod-on-two-throws': ({ rod, first, second }) =>
    `Kurbelwelle: Pleuel ${rod} steht bei Kröpfung ${first} und bei Kröpfung ${second}. Es läuft auf einem Hubzapfen: einmal entfernen.`,
  'saddle-within-throw': ({ throw: named, saddle }) =>
    `Kurbelwelle: Die Pleuel von Kröpfung ${named} liegen beiderseits von Lagersitz ${saddle}; kein Hubzapfen geht durch einen Lagersitz. Pleuel der Kröpfung berichtigen.`,
  'counterweight-twice': ({ throw: named, side }) =>
    `Kurbelwelle: Die Wange von Kröpfung ${named} zur ${side === 'nose' ? 'Steuerseite' : 'Abtriebsseite'} hat zwei Gegengewichte. Eines entfernen.`,
  'wheel-over-bearing': ({ wheel, bearing }) =>
    `Kurbelwelle: Das Rad „${wheel}“ liegt über ${bearing}. Lage oder Breite berichtigen.`,
  'crank-not-described': ({ step }) =>
    `„${step}“ zeigt die Kurbelwelle, dieses Datenblatt hat keine. Die Kurbelwelle beschreiben oder sie in diesem Schritt nicht zeigen.`,
  'crank-not-on-face': ({ step, face }) =>
    `„${step}“ zeigt die Kurbelwelle, auf „${face}“ ist sie nicht zu sehen. Die Fläche mit den Lagersitzen nennen oder eine quer am Gehäuseende.`,

  'seal-too-small': ({ seal, shaft, diameter }) =>
    `${seal}: Die Welle, ${shaft}, ist nicht dünner als der Wellendichtring, ${diameter}. Eines davon berichtigen.`,
  'gasket-not-listed': ({ face }) =>
    `${face}: Die Dichtung fehlt in der Teileliste, niemand hakt sie ab. Dort ergänzen und bei der Dichtung sagen, welches Teil sie ist.`,
  'gasket-used-again': ({ face, part }) =>
    `${face}: Die Dichtung „${part}“ ist wiederverwendbar. Eine Dichtung ist üblicherweise jedes Mal neu: nachschlagen.`,
  'gasket-laid-elsewhere': ({ face, part }) =>
    `${face}: Kein Schritt an dieser Fläche legt die Dichtung „${part}“ ein. Beim Teil den Schritt angeben, in dem es eingebaut wird, und in diesem Schritt die Fläche.`,

  'bead-in-keep-out': ({ bead, zone }) =>
    `${bead} läuft in die Sperrzone „${zone}“. Verlauf darum herumführen.`,
  'bead-over-oil-passage': ({ bead, passage }) =>
    `${bead} läuft über „${passage}“ und würde den Kanal verschließen. Verlauf darum herumführen.`,
  'bead-over-hole': ({ bead, what }) => `${bead} läuft über ein Loch: ${what}. Verlauf daran vorbeiführen.`,
  'bead-outside-outline': ({ bead, face }) =>
    `${bead} verlässt den Umriss von „${face}“. Verlauf oder Umriss berichtigen.`,

  'steps-in-a-ring': ({ steps }) =>
    `Die Schritte ${steps.map((step) => `„${step}“`).join(', ')} warten aufeinander, keiner kann beginnen. ` +
    'Bei einem die Vorbedingung herausnehmen.',
  'procedure-never-run': ({ procedure }) =>
    `${procedure}: Kein Schritt führt diesen Anziehvorgang aus. Schritt ergänzen oder Anziehvorgang entfernen.`,
  'bead-never-laid': ({ bead }) =>
    `${bead}: Kein Schritt trägt sie auf. Schritt ergänzen oder Dichtraupe entfernen.`,
  'fit-without-step': ({ fit, missing }) =>
    `${fit}: Es fehlt der Schritt „${shellSteps[missing]}“. Ergänzen, sonst werden die Lagerschalen vergessen.`,
  'done-in-two-steps': ({ work, first, second }) =>
    `${workIn(work)}: kommt in „${first}“ und in „${second}“ vor. Im Aufbau geschieht es einmal: einen Schritt entfernen.`,
  'step-does-not-wait': ({ step, other }) =>
    `„${step}“ kann beginnen, bevor „${other}“ erledigt ist. Dahinter einordnen.`,

  'skippable-step-needed': ({ step, other }) =>
    `„${step}“ darf übersprungen werden, „${other}“ braucht den Schritt aber. Überspringen nicht zulassen oder „${other}“ davon lösen.`,

  'part-count-differs': ({ part, count, used }) =>
    `„${part}“: ${count} in der Liste, die Schritte verwenden ${used}. Eines davon berichtigen.`,
  'part-twice-in-step': ({ part, step }) =>
    `„${part}“ steht bei „${step}“ zweimal. Anzahl dort einmal eintragen.`,
  'part-where-nothing-is-fitted': ({ part, step }) =>
    `„${part}“ wird in „${step}“ verwendet, dort wird aber nichts eingebaut. Einen Einbauschritt nennen.`,
  'count-without-parts': ({ step }) =>
    `„${step}“ zählt übrige Teile, aber es gibt keine Teileliste. Liste ergänzen oder Schritt entfernen.`,
  'parts-never-counted': (_) =>
    'Es gibt eine Teileliste, aber kein Schritt zählt übrige Teile. Am Ende einen ergänzen.',

  'service-limits-narrower': ({ name }) =>
    `${name}: Die Grenzen für gebrauchte Teile sind enger als die für neue. Eines davon berichtigen.`,
  'place-twice': ({ step, place }) =>
    `„${step}“ hat zwei Stellen mit dem Namen „${place}“ oder derselben Kennung. Jeder eine eigene geben.`,
  'measured-place-twice': ({ name, place }) =>
    `${name}: „${place}“ kommt zweimal vor. Jeder Stelle einen eigenen Namen geben.`,
  'measure-twice': ({ name, id }) =>
    `${name}: „${id}“ steht zweimal in einem Schritt. Jeder Messung eine eigene Kennung geben.`,
  'ring-gap-may-close': ({ name }) =>
    `${name}: Es fehlt ein Mindest-Stoßspiel über null. Ringenden dürfen sich nie berühren: Mindestwert des Handbuchs eintragen.`,
  'ring-gap-unusual': (facts) =>
    `${facts.name}: Bei einer Bohrung von ${facts.bore} liegt das Stoßspiel zwischen ${facts.least} und ${facts.most}. Grenzen und Einheit prüfen.`,

  'fasteners-none': () =>
    'Keine Schraube ist beschrieben; nichts würde angezogen. Die eingeben, die die Teile zusammenhalten, nach dem Handbuch.',
  'bearings-without-fit': ({ bearing, ids }) =>
    `${bearing === 'main' ? 'Grundlager' : 'Pleuellager'} ${ids.join(', ')}: Keine Lagerung sagt, welche Schalen hineingehören, und nichts fragt danach. Eine Lagerung ergänzen oder nachsehen, ob sie keine haben.`,
  'saddles-none': (_) =>
    'In diesem Gehäuse läuft eine Kurbelwelle, aber es hat keinen Lagersitz. Die Grundlager nach dem Handbuch setzen, oder keine Fläche Lagersitze oder Pleuel zeigen lassen.',
  'end-float-missing': ({ saddle }) =>
    `${saddle} hat die Anlaufscheiben, aber kein Axialspiel ist angegeben. Die Grenzen aus dem Handbuch eingeben.`,
  'standing-caution-missing': (_) =>
    'Kein Hinweis sagt, dass das aktuelle Handbuch des Herstellers und eine Fachkraft diesem Programm vorgehen. Einen für alle Schritte ergänzen.',
  'source-unchecked': ({ enteredBy }) =>
    `Werte eingegeben von ${enteredBy}, von niemandem geprüft. Zweite Person die Werte mit der Quelle vergleichen lassen.`,
  'value-reads-otherwise': ({ place, by, found }) =>
    `${place}: ${by} hat den Wert mit dem Handbuch verglichen und liest dort „${found}“. Klären, was gilt: den Wert berichtigen oder noch einmal vergleichen lassen.`,
  'source-copied-from-demo': ({ demo }) =>
    `Dieses Datenblatt wurde als Kopie der Demo „${demo}“ angefangen, deren Zahlen erfunden sind. Jeden Wert mit dem Handbuch vergleichen, dann das im Editor unter „Gegenlesen“ sagen; in einer Datei „copiedFromDemo“ aus der Quelle nehmen.`,
  'source-checked-by-same': ({ enteredBy }) =>
    `Werte eingegeben und geprüft von ${enteredBy}. Zweite Person die Werte mit der Quelle vergleichen lassen.`,
}
