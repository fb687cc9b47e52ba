import type { Words } from '../../words.ts'
import type { Layer } from '../../en/tightening/joint.ts'
import { thread } from '../formats.ts'

const threadClasses = {
  oiled: 'Gewinde geölt: VDI 2230 Blatt 1, Tabelle A5, Klasse B, Mittelwert',
  dry: 'Gewinde trocken: VDI 2230 Blatt 1, Tabelle A5, Klasse C, Mittelwert',
  sealant: 'Dichtmittel am Gewinde: VDI 2230 Blatt 1, Tabelle A5, Klassen B und C zusammen',
  'thread-lock': 'Schraubensicherung am Gewinde: VDI 2230 Blatt 1, Tabelle A5, Klassen B und C zusammen',
}

const layersText = (layers: readonly Layer[]): string =>
  layers
    .map(({ material, modulus, thickness }) =>
      thickness === null ? `${material} mit ${modulus}` : `${thickness} ${material} mit ${modulus}`,
    )
    .join(' auf ')

export const pullInputs: Words['pullInputs'] = {
  names: {
    thread: 'Gewinde',
    class: 'Festigkeitsklasse',
    face: 'Kopfauflage',
    friction: 'Reibung',
    prevailing: 'Klemmdrehmoment',
    torque: 'Drehmoment und Vorspannkraft',
    yield: 'Streckgrenze',
    bolt: 'Nachgiebigkeit der Schraube',
    parts: 'Nachgiebigkeit der Teile',
    turn: 'Drehwinkel und Vorspannkraft',
  },
  values: {
    thread: ({ designation }) => thread(designation),
    class: (facts) => `${facts.name}: Prüfspannung ${facts.proof}, Streckgrenze ${facts.yield}`,
    face: ({ outer, hole }) => `Ø ${outer}, Bohrung Ø ${hole}`,
    friction: (facts) =>
      `${facts.usual}, zwischen ${facts.least} und ${facts.most}; daraus folgen die Grenzen der Vorspannkraft`,
    prevailing: (facts) =>
      facts.isIncluded === false
        ? `bis ${facts.torque}, wird gemessen und zum Drehmoment addiert; das Drehmoment klemmt ganz`
        : `0 bis ${facts.torque}, üblich die Hälfte davon; geht vom Drehmoment ab, bevor es klemmt` +
          (facts.isIncluded === null ? '; im Datenblatt nicht angegeben, nichts wird zugeschlagen' : ''),
    torque: (_) => 'M = F·(0,16·P + 0,58·d2·µ + D_Km/2·µ)',
    yield: (_) => 'Zug und Torsion zusammen erreichen die Streckgrenze',
    resilience: ({ perKilonewton }) => `${perKilonewton} je kN`,
    turn: (_) => 'ΔF = θ/360° · P/(δ_S + δ_P), ab der Streckgrenze konstant',
  },
  sources: {
    'metric-thread': (_) => 'Datenblatt; übrige Maße nach ISO 724',
    'unified-thread': (_) => 'Datenblatt; übrige Maße nach ASME B1.1',
    'sae-class': (_) => 'Datenblatt; SAE J429, Tabelle 1',
    'astm-class': (_) => 'Datenblatt; ASTM A574, mechanische Anforderungen',
    'iso-class': (_) => 'Datenblatt; ISO 898-1, Tabelle 3',
    spec: (_) => 'Datenblatt',
    'socket-head': (_) => 'aus dem Durchmesser eines Innensechskantkopfs nach ISO 4762 und ISO 273',
    'inch-socket-head': (_) => 'aus dem Durchmesser eines Innensechskantkopfs nach ASME B18.3',
    'hexagon-head': (_) => 'aus der Schlüsselweite nach ISO 4014 und ISO 273',
    'threads-state': ({ state }) => threadClasses[state],
    'friction-class': ({ name }) =>
      `Klasse ${name} laut Datenblatt: VDI 2230 Blatt 1, Tabelle A5, Mittelwert`,
    prevailing: (_) => 'Datenblatt; ISO 2320',
    torque: (_) => 'VDI 2230 Blatt 1, ISO 16047',
    yield: (_) => 'VDI 2230 Blatt 1, 2001 und später',
    bolt: (facts) =>
      `VDI 2230 Blatt 1, 5.1.1; Stahlschraube nach ${facts.head === 'socket' ? 'ISO 4762' : 'ISO 4014'}, Klemmlänge ` +
      `${facts.grip}${facts.shank === null ? '' : `, Schaft ${facts.shank}`}, ` +
      (facts.into === 'nut' ? 'mit Mutter' : 'Einschraubtiefe ein Durchmesser'),
    parts: ({ into, layers }) =>
      into === 'nut'
        ? `zwei Kegel von 30° unter Kopf und Mutter (Shigley's Mechanical Engineering Design, 8-5), in ${layersText(layers)}`
        : `ein Kegel von 30° unter dem Kopf (Shigley's Mechanical Engineering Design, 8-5), in ${layersText(layers)}, in ein Sackloch`,
    turn: (_) => 'VDI 2230 Blatt 1',
  },
}

export const flangeAssumptions: Words['flangeAssumptions'] = {
  caps:
    'Jeder Lagerdeckel ist ein Balken quer über sein Lager, so breit wie das Lager und so hoch wie die Klemmlänge seiner Schrauben; ' +
    'innerhalb der Bohrung liegt nichts darunter, und kein Deckel spürt den anderen.',
  walls:
    'An jedem Lagersitz läuft eine Wand von Kante zu Kante, so breit wie der Lagersitz und so hoch wie die Klemmlänge der ' +
    'Schrauben darin; innerhalb der Bohrung liegt nichts darunter.',
  rail:
    'Der Flansch läuft als ein Balken am Rand der Fläche entlang, doppelt so breit wie der Randabstand seiner Schrauben ' +
    'und so hoch wie deren mittlere Klemmlänge.',
  'nearest-place': 'Jede Schraube zieht an der nächsten Stelle des Randes oder einer Wand.',
  metal: 'Metall liegt auf Metall, höchstens mit einem Film Dichtmittel.',
  gasket:
    'Zwischen den Flächen liegt eine flache Faserdichtung von 0,5 mm, die zurückfedert; eine echte setzt sich auch.',
  bed:
    'Was darunter liegt, gibt nach wie eine gleichmäßige Bettung, so wie ein Balken gleicher Höhe unter Druck. Die ' +
    'Bettung drückt und zieht nie: Wo der Flansch abhebt, ist die Verbindung offen.',
  flat:
    'Die Flächen sind eben und liegen vor dem ersten Anzug aufeinander; jede Schraube ist von Hand bis zur Auflage ' +
    'eingedreht.',
  elastic:
    'Die Schraube ist eine elastische Feder mit der Steifigkeit von Schaft, Gewinde und Kopf. Sie fließt nicht, und ' +
    'nichts setzt sich.',
  teaching:
    'Dies ist ein Lehrmodell. Es zeigt, wie Schrauben einander Last abnehmen, nicht, was eine Schraube dieses ' +
    'Motors hält.',
}
