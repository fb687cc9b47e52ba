import type { libraryWords as pattern } from '../../en/problems/library.ts'
import type { Table } from '../../table.ts'
import { counted } from '../formats.ts'

export const libraryWords: Table<typeof pattern> = {
  'draft-unknown': () =>
    'Diesen Entwurf gibt es in der Aufzeichnung nicht. In der Bibliothek einen vorhandenen wählen.',
  'draft-of-another-version': () =>
    'Eine andere Version von Bedplate hat diesen Entwurf geschrieben, mit Änderungen, die diese nicht versteht. Alle bleiben erhalten: mit jener Version öffnen.',
  'draft-moved-on': ({ last }) =>
    `Ein anderes Fenster hat diesen Entwurf inzwischen geändert; er steht jetzt bei Eintrag ${last}. Gezeigt ist, was jetzt gilt: ansehen, dann die Änderung erneut vornehmen.`,
  'draft-closed': ({ state }) =>
    state === 'published'
      ? 'Dieser Entwurf ist freigegeben, und eine freigegebene Revision wird nie geändert. In der Bibliothek eine neue Revision anfangen.'
      : 'Dieser Entwurf ist verworfen. Zum Weiterarbeiten in der Bibliothek zurückholen.',
  'draft-not-discarded': () => 'Dieser Entwurf ist nicht verworfen. Aus der Bibliothek öffnen.',
  'draft-nothing-to-undo': () => 'Nichts rückgängig zu machen. So wurde der Entwurf angefangen.',
  'draft-nothing-to-redo': () =>
    'Nichts wiederherzustellen. Dies ist der Entwurf nach seiner letzten Änderung.',
  'draft-edit-unfit': () =>
    'Diese Änderung passt nicht zum Entwurf, wie er jetzt ist; nichts wurde geändert. Entwurf neu öffnen und die Änderung noch einmal vornehmen.',
  'check-of-a-demo': () =>
    'Die Zahlen einer Demo sind erfunden: es gibt kein Handbuch zum Vergleichen. In der Bibliothek einen eigenen Motor beginnen.',
  'check-by-who-entered': ({ person }) =>
    `${person} hat diese Zahlen eingegeben, und niemand findet die eigenen Fehler. Eine andere Person vergleichen lassen: deren Namen an der Werkbank wählen.`,
  'draft-faulty': ({ faults }) =>
    `Die Prüfung findet ${counted(faults, 'Fehler', 'Fehler')}; ein Motor danach würde falsch. Beheben, was sie sagt, dann freigeben.`,
  'draft-overtaken': ({ revision }) =>
    `Revision ${revision} wurde inzwischen aus einem anderen Entwurf freigegeben. Beide in der Bibliothek vergleichen und von der neuesten eine neue Revision anfangen.`,
  'draft-id-taken': ({ engine }) =>
    `Die Kennung „${engine}“ hat schon ein anderer Motor. Diesem eine andere geben.`,
  'engine-name-missing': () =>
    'Der Motor hat noch keinen Namen. Den eingeben, unter dem er hier bekannt ist.',
  'engine-manual-missing': () =>
    'Es fehlt, aus welchem Handbuch die Zahlen stammen. Titel und Ausgabe eingeben, damit jemand anderes sie prüfen kann.',
  'bare-size-not-above-zero': () => 'Null oder weniger ist kein Maß. Mit Einheit neu eingeben.',
  'bare-thrust-main': ({ main, mains }) =>
    `Grundlager ${main} soll die Anlaufscheiben haben, es gibt aber ${mains}. Ein vorhandenes wählen.`,
  'library-engine-unknown': ({ engine }) =>
    `Den Motor „${engine}“ gibt es in dieser Revision nicht in der Bibliothek. Bibliothek neu öffnen und einen vorhandenen wählen.`,
  'spec-file-foreign': () =>
    'Das ist keine Datei eines Motordatenblatts. Eine wählen, die aus einer Bibliothek gespeichert wurde und auf .bedplate-spec endet.',
  'spec-file-newer': ({ version, known }) =>
    `Diese Datei stammt von einem neueren Bedplate (Version ${version} der Datenblätter, dieses kennt ${known}). Nichts wurde übernommen. Mit dem neueren Programm öffnen.`,
  'spec-file-older': ({ version, known }) =>
    `Diese Datei hat Version ${version} der Datenblätter, und dieses Programm kennt nur ${known}. Nichts wurde übernommen. Das Datenblatt mit einem neueren Programm erneut speichern.`,
  'spec-file-altered': () =>
    'Das Datenblatt in dieser Datei ist nicht mehr wie gespeichert: Die Prüfsumme weicht ab. Nichts wurde übernommen. Die Datei neu anfordern und nicht mit einem Editor öffnen.',
  'spec-file-not-a-spec': ({ why }) =>
    `Das Datenblatt in dieser Datei ist nicht lesbar; nichts wurde übernommen. ${why}`,
  'spec-file-faulty': ({ faults, why }) =>
    `Die Prüfung findet in diesem Datenblatt ${counted(faults, 'Fehler', 'Fehler')}; nichts wurde übernommen. ${why}`,
}
