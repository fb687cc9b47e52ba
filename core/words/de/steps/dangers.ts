import type { Words } from '../../words.ts'

/** As German manuals print the signal words of ANSI Z535.6; for NOTICE both ACHTUNG and HINWEIS are in use. */
export const signals: Words['signals'] = {
  DANGER: 'GEFAHR',
  WARNING: 'WARNUNG',
  CAUTION: 'VORSICHT',
  NOTICE: 'ACHTUNG',
}

export const dangers: Words['dangers'] = {
  'heavy-lift':
    'Abrutschendes schweres Teil kann Hand oder Fuß quetschen. Mit Hebezeug oder zu zweit heben, nie darunter greifen.',
  'turning-crank':
    'Pleuel und Gegengewichte der drehenden Kurbelwelle können Finger quetschen. Am Wellenende und langsam drehen, wenn keine Hand im Gehäuse ist.',
  'hot-part':
    'Erwärmtes Teil kann die Hände schwer verbrennen. Hitzeschutzhandschuhe tragen, nicht unbeaufsichtigt liegen lassen.',
  'spring-load':
    'Gespannte Feder oder Sicherungsring kann ins Auge springen. Schutzbrille tragen, mit der Hand abdecken, bis das Teil sitzt.',
  'press-load':
    'Unter der Presse abrutschendes Teil kann herausschießen. Schutzbrille tragen, gerade ansetzen, Hände fernhalten.',
  'compressed-air': 'Druckluft kann Späne ins Auge treiben. Schutzbrille tragen, nie auf Personen richten.',
  solvent:
    'Lösemittel kann sich entzünden, Dämpfe können benommen machen. Tür öffnen, Flammen fernhalten, Handschuhe tragen.',
  'sealant-on-skin':
    'Nicht ausgehärtetes Dichtmittel reizt Haut und Augen. Handschuhe tragen; trocken abwischen, dann mit Seife waschen.',
  'sharp-edge': 'Ringenden und bearbeitete Kanten schneiden. Beim Hantieren Handschuhe tragen.',
  'sealant-in-oil-way':
    'Dichtmittel im Ölkanal lässt ein Lager trockenlaufen. Dichtraupe schmal und von jedem Loch fern halten.',
  'journal-scratch':
    'Schraube oder Pleuel am Zapfen hinterlässt Riefen. Gewinde mit Schutzhülsen abdecken, Pleuel von Hand führen.',
  'dirt-in-joint':
    'Span oder Faser unter der Lagerschale oder in der Trennfuge verfälscht das Lagerspiel. Beide Flächen abwischen und nochmals ansehen.',
}
