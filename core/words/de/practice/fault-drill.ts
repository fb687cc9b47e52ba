import type { Words } from '../../words.ts'
import { and, counted } from '../formats.ts'

export const faultDrill: Words['practice']['fault'] = {
  find: 'An diesem fertigen Aufbau ist eines falsch. Welches Teil? Antippen.',
  shown: 'Gezeigt',
  showns: { drawing: 'Zeichnung', rings: 'Kolbenringe', sheet: 'Montageblatt' },
  sheet: 'Ergebnisse des Montageblatts',
  notThis: 'Daran ist nichts falsch.',
  onFace: ({ face }) => `Auf dieser Fläche: ${face}.`,
  onRings: ({ piston }) => `An den Kolbenringen: ${piston}.`,
  ringsOf: ({ piston, rings }) => `${piston}: ${rings}`,
  itIs: ({ part }) => `Es ist hier: ${part}.`,
  found: ({ part }) => ['Ja: ', { strong: part }, '.'],
  both: (places) => and(places),
  capOf: ({ id }) => `Deckel ${id}`,
  what: 'Was ist daran falsch?',
  kinds: {
    'missed-pull': 'Ein Anzug fehlt',
    'shells-swapped': 'Schale gehört woandershin',
    'bead-over-passage': 'Dichtraupe liegt über Ölkanal',
    'cap-turned': 'Deckel ist verdreht',
    'gaps-in-line': 'Stoß fluchtet mit dem Nachbarring',
  },
  notThat: 'Das ist hier in Ordnung.',
  cap: ({ id, to }) => `Deckel ${id}: Pfeil zeigt zur ${to === 'nose' ? 'Steuerseite' : 'Abtriebsseite'}`,
  seen: {
    'missed-pull': (of) =>
      `Auf der Zeichnung ist der Ring von ${of.number} nicht voll. Im Montageblatt hat ${of.procedure}, Durchgang ${of.pass}, ` +
      `${counted(of.pulled - 1, 'Schraube', 'Schrauben')} statt ${of.pulled}.`,
    'shells-swapped': (of) =>
      of.shells
        .map((each) => `${each.place}: ${each.grade}, nach den Kennzeichen gehört ${each.wanted} hin.`)
        .join(' ') +
      ' Die Klassen stehen auf Zeichnung und Montageblatt, die Kennzeichen nur im Montageblatt.',
    'bead-over-passage': ({ bead, passage }) =>
      `Auf der Zeichnung läuft ${bead} über ${passage}. Im Montageblatt steht nur, wann sie aufgetragen wurde.`,
    'gaps-in-line': (of) =>
      `${of.piston}: Die Stöße von ${of.rings} fluchten; zwischen Nachbarn nötig sind mindestens ${of.least}. Im Montageblatt steht ` +
      'für beide derselbe Winkel.',
    'cap-turned': ({ id }) =>
      `Auf der Zeichnung zeigt der Pfeil von ${id} zur Abtriebsseite und liegt auf der anderen Seite. Im Montageblatt ist es nicht zu sehen.`,
  },
  leaves: (of) => `${of.place}: Lagerspiel ${of.clearance}; zulässig ${of.allowed}.`,
  does: {
    'missed-pull':
      'Sie wurde nicht mit den Nachbarinnen hochgezogen, diese tragen ihre Last. Die Fuge schließt dort ungleich, reibt und leckt, und die Schraube kann sich lösen.',
    'shells-swapped':
      'Von zwei Lagern wird eines enger und eines weiter als vorgesehen. Das enge läuft heiß; das weite lässt das Öl der anderen ab und klopft.',
    'bead-over-passage':
      'Beim Schließen wird Dichtmittel in den Ölkanal gedrückt. Es verengt ihn oder löst sich und verstopft, was dahinter liegt.',
    'cap-turned':
      'Deckel und Lagersitz wurden gemeinsam gebohrt und passen nur in einer Richtung. Verdreht treffen sich die Hälften nicht: Die Bohrung ist nicht mehr rund, die Schale wird geklemmt.',
    'gaps-in-line':
      'Gas, das durch einen Stoß tritt, geht gleich durch den nächsten. Es bläst am Kolben vorbei und verbrennt das Öl an der Laufbahn; der Motor verliert Kompression und raucht.',
  },
}
