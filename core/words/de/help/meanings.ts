import type { TermId } from '../../help/terms.ts'

/** What each word of the trade means. */
export const meanings: Readonly<Record<TermId, string>> = {
  'bearing-shell':
    'Eine Hälfte eines Gleitlagers: dünner Stahlrücken mit weicher Laufschicht, in ihre Hälfte der Bohrung gedrückt.',
  'main-bearing': 'Ein Lager, in dem sich die Kurbelwelle im Gehäuse dreht.',
  'big-end-bearing': 'Das Lager eines Pleuels auf seinem Hubzapfen.',
  'balance-shaft':
    'Eine Welle mit Gewichten, die mit der Kurbelwelle läuft und Schwingungen ausgleicht; sie hat eigene Lager.',
  saddle: 'Die halbe Bohrung im Gehäuse, die ein Grundlager trägt.',
  journal: 'Der geschliffene Teil einer Welle, der sich in einem Lager dreht.',
  crankpin: 'Der Zapfen der Kurbelwelle, auf dem ein Pleuel läuft.',
  bore: 'Das runde Loch, das ein Lager, einen Bolzen oder einen Kolben aufnimmt; sein Maß ist der Durchmesser.',
  clearance: 'Der Spalt für das Öl zwischen Schale und Zapfen: Bohrung mit eingelegten Schalen minus Zapfen.',
  crush:
    'Das Wenige, um das eine eingelegte Schale über die Teilung steht, damit das Schließen sie festpresst.',
  tang: 'Die gebogene Nase einer Schale, die in einer Nut liegt und die Lage vorgibt.',
  wall: 'Wie dick eine Schale in ihrer Mitte ist; dickere Schalen geben weniger Spiel.',
  grade: 'Eine Klasse von Schalen nach Wanddicke, erkennbar an Buchstabe, Ziffer oder Farbe.',
  'size-mark':
    'Eine eingeschlagene Ziffer oder ein Buchstabe an Gehäuse, Kurbelwelle oder Pleuel: sagt, in welchem Feld ein Maß liegt.',
  chart: 'Die Tabelle des Handbuchs, die sagt, welche Schale zu welchen zwei Kennzeichen gehört.',
  undersize:
    'Um wie viel ein geschliffener Zapfen kleiner ist als ein neuer; er braucht dickere Schalen gleichen Namens.',
  'out-of-round': 'Größter minus kleinster Durchmesser in einer Ebene quer durch Bohrung oder Zapfen.',
  taper: 'Um wie viel sich der Durchmesser von einem Ende der Bohrung oder des Zapfens zum anderen ändert.',
  'service-limit': 'Der Wert des Handbuchs, bis zu dem ein gebrauchtes Teil weiter verwendet werden darf.',
  'end-float': 'Wie weit sich die Kurbelwelle entlang ihrer Achse bewegen lässt.',
  'thrust-washer': 'Ein halber Ring mit Lauffläche, der die Kurbelwelle in Achsrichtung hält.',
  'side-clearance': 'Der Spalt zwischen dem Pleuelfuß und der Wange der Kurbelwelle.',
  'run-out':
    'Um wie viel sich die Messuhr bewegt, während eine Welle an ihren Enden gelagert einmal gedreht wird.',
  'turning-torque':
    'Was nötig ist, um die Kurbelwelle langsam weiterzudrehen; es steigt, wo ein Lager klemmt.',
  crankcase: 'Der Körper, der die Kurbelwelle trägt.',
  'case-half': 'Eines der beiden Teile eines Gehäuses, das durch die Achse der Kurbelwelle geteilt ist.',
  'joint-face': 'Die ebene Fläche, an der zwei Teile des Gehäuses zusammenkommen.',
  'main-cap': 'Das Teil, das ein Grundlager über seinem Sitz schließt; es hat eigene Nummer und Richtung.',
  bedplate: 'Ein Gussteil, das alle unteren Lagersitze enthält.',
  crankshaft: 'Die Welle, die die Hübe der Kolben in Drehung wandelt.',
  nose: 'Das vordere Ende der Kurbelwelle, von dem aus die Lager gezählt werden.',
  'drive-end': 'Das Ende der Kurbelwelle, das die Leistung abgibt.',
  'connecting-rod': 'Die Stange zwischen Kolbenbolzen und Hubzapfen.',
  'rod-cap': 'Das Teil, das den Pleuelfuß schließt; es gehört zu genau diesem Pleuel, in genau einer Lage.',
  dowel: 'Ein Stift oder eine Hülse, die zwei Teile genau zueinander hält.',
  'oil-way': 'Ein gebohrter oder gegossener Kanal, der einem Lager Öl bringt.',
  'oil-seal':
    'Ein Ring mit Lippe und Feder, der an einer drehenden Welle das Öl zurückhält; die Lippe zeigt zum Öl.',
  gasket: 'Eine dünne Lage zwischen zwei Flächen, die sie abdichtet.',
  'timing-mark':
    'Eine Markierung an einem Rad, die auf eine andere treffen muss, damit die Wellen richtig zueinander stehen.',
  piston:
    'Das Teil, das sich im Zylinder bewegt; seine Markierung sagt, in welcher Richtung es hineingehört.',
  'piston-pin': 'Der Bolzen, der Kolben und Pleuel verbindet.',
  circlip: 'Ein Federring in einer Nut, der den Kolbenbolzen an seinem Platz hält.',
  'piston-ring':
    'Ein federnder Ring in einer Nut des Kolbens: Kompressionsringe dichten, Abstreif- und Ölringe nehmen Öl ab.',
  'ring-gap': 'Der Spalt zwischen den Enden eines Rings, der in seiner eigenen Bohrung liegt.',
  'groove-clearance': 'Der Spalt zwischen einem Ring und der Flanke seiner Nut.',
  'deck-height': 'Wie weit der Kolbenboden im oberen Totpunkt unter oder über der Blockfläche steht.',
  sealant: 'Eine Paste, die zwischen zwei Flächen aushärtet und sie abdichtet.',
  bead: 'Der Strang Dichtmittel entlang seines Verlaufs auf einer Fläche.',
  'open-time':
    'Wie lange Dichtmittel offen liegen darf, bis die Verbindung geschlossen und angezogen sein muss.',
  bolt: 'Ein Verbindungselement mit Kopf, das in ein Gewinde oder eine Mutter gedreht wird.',
  stud: 'Eine Gewindestange, die im Gehäuse sitzt und eine Mutter trägt.',
  nut: 'Ein Verbindungselement mit Innengewinde.',
  'through-bolt':
    'Eine Schraube, die durch beide Gehäusehälften geht und auf der anderen Seite von Mutter oder Gewinde gehalten wird.',
  torque: 'Wie stark ein Verbindungselement gedreht wird: Kraft mal Hebel, in Newtonmeter oder Foot-Pound.',
  'tightening-order': 'Was nach was angezogen wird, damit sich die Verbindung gleichmäßig schließt.',
  procedure: 'Alle Durchgänge einer Verbindung mit Reihenfolge und Werten.',
  pass: 'Eine Runde über alle Schrauben einer Verbindung mit einem Wert.',
  pull: 'Das einmalige Anziehen einer Schraube in einem Durchgang.',
  angle: 'Wie weit nach dem Drehmoment weitergedreht wird, in Grad.',
  stretch: 'Um wie viel eine angezogene Schraube länger ist; es sagt, wie stark sie belastet ist.',
  recheck: 'Ein Durchgang, der jede Schraube noch einmal mit ihrem Wert prüft: Bewegt sie sich?',
  preload: 'Die Kraft, mit der eine angezogene Schraube die Verbindung zusammenzieht.',
  'proof-load': 'Die Last, die eine Schraube ihrer Festigkeitsklasse aushält, ohne länger zu bleiben.',
  yield: 'Die Last, ab der eine Schraube bleibend länger wird.',
  'prevailing-torque': 'Was eine selbstsichernde Mutter beim Eindrehen braucht, bevor sie anliegt.',
  'cross-talk':
    'Das Anziehen einer Schraube entlastet ihre Nachbarn; daher Reihenfolgen und mehrere Durchgänge.',
  'thread-lock': 'Eine Flüssigkeit, die im Gewinde aushärtet und es gegen Lösen sichert.',
  'torque-wrench': 'Ein Schlüssel, der beim eingestellten Drehmoment auslöst oder den Wert anzeigt.',
  adapter:
    'Ein Einsatz, der die Schraube vom Abtrieb des Schlüssels wegrückt; der Schlüssel wird dann anders eingestellt.',
  calibration: 'Der Vergleich eines Werkzeugs mit einem bekannten Normal, mit notiertem Datum.',
  'feeler-gauge': 'Ein Satz dünner Blätter bekannter Dicke zum Messen von Spalten.',
  'dial-gauge': 'Eine Uhr mit Taststift, die kleine Bewegungen anzeigt.',
  micrometer: 'Ein Messgerät mit Messspindel für Außenmaße, auf ein Hundertstel Millimeter oder feiner.',
  'bore-gauge':
    'Ein Messgerät für den Durchmesser einer Bohrung, mit Ring oder Bügelmessschraube eingestellt.',
  'plastic-gauge': 'Ein weicher Faden, der im Lager flachgedrückt wird; seine Breite sagt das Spiel.',
  build:
    'Ein Motor, der mit diesem Programm zusammengebaut wird, vom leeren Gehäuse bis zum unterschriebenen Blatt.',
  spec: 'Die Datei mit Kennzeichen, Schalen, Schritten, Reihenfolgen und Werten eines Motors, aus seinem Handbuch übernommen.',
  record: 'Alle Aufbauten dieser Werkbank, Eintrag für Eintrag, auf dem Datenträger.',
  entry: 'Eine bestätigte Sache: was, wann, durch wen; sie wird nie geändert.',
  'head-code':
    'Das Ende eines Codes über alle Einträge eines Aufbaus; ein anderer Code heißt andere Einträge.',
  'build-sheet': 'Das Papier, das alles sagt, was in einem Aufbau getan wurde.',
  flag: 'Der Vermerk, dass an einer Schraube etwas nicht stimmte; er bleibt, bis gesagt ist, was getan wurde.',
}
