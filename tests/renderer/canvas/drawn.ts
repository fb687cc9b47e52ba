/** One number as both pictures have it: to a thousandth of a millimetre. */
const short = (value: number): string => String(Math.round(value * 1000) / 1000 + 0)

interface Ink {
  readonly fill: string
  readonly stroke: string
  readonly width: string
  readonly dash: string
}

/** What a picture shows of one mark, in words, so that two pictures can be laid side by side. */
function lineOf(what: string, { fill, stroke, width, dash }: Ink): string {
  return [what, `fill ${fill}`, stroke === 'none' ? '' : `stroke ${stroke} ${width} ${dash}`].join(' ').trim()
}

/** A canvas that writes down what is drawn on it, one line for each mark. */
export class Drawn {
  readonly said: string[] = []
  #path: string[] = []
  #closed = false
  #round: { x: number; y: number; radius: number; from: number; to: number } | null = null
  #open: { what: string; fill: string } | null = null
  #dash = ''
  #halo = ''

  readonly context = this.#contextOf()

  #what(): string {
    if (this.#round === null) return `path ${this.#path.join(' ')}${this.#closed ? ' closed' : ''}`
    const { x, y, radius, from, to } = this.#round
    const share = (to - from) / (2 * Math.PI)
    const round = `${short(x)},${short(y)} r ${short(radius)}`
    return from === 0
      ? `circle ${round}`
      : `sector ${x.toFixed(1)},${y.toFixed(1)} r ${short(radius)} ${share.toFixed(3)}`
  }

  #contextOf(): CanvasRenderingContext2D {
    const say = (fill: string, stroke: string, width: string, dash: string) => {
      const what = this.#what()
      // Fill and stroke of one mark come one after the other.
      if (this.#open?.what === what && stroke !== 'none') this.said.pop()
      const filled = this.#open?.what === what && stroke !== 'none' ? this.#open.fill : fill
      this.said.push(lineOf(what, { fill: filled, stroke, width, dash }))
      this.#open = stroke === 'none' ? { what, fill } : null
    }
    const context = {
      fillStyle: '',
      strokeStyle: '',
      lineWidth: 0,
      lineCap: 'butt',
      font: '',
      textAlign: '',
      beginPath: () => {
        this.#path = []
        this.#closed = false
        this.#round = null
        this.#open = null
      },
      lineTo: (x: number, y: number) => void this.#path.push(`${short(x)},${short(y)}`),
      closePath: () => void (this.#closed = true),
      arc: (x: number, y: number, radius: number, from: number, to: number) =>
        void (this.#round = { x, y, radius, from, to }),
      setLineDash: (dash: readonly number[]) => void (this.#dash = dash.map(short).join(' ')),
      fill: () => say(context.fillStyle, 'none', '', ''),
      stroke: () => {
        const cap = context.lineCap === 'round' ? 'round' : ''
        say('none', context.strokeStyle, short(context.lineWidth), `${this.#dash}${cap}`)
      },
      strokeText: () => void (this.#halo = `halo ${context.strokeStyle} ${short(context.lineWidth)}`),
      fillText: (text: string, x: number, y: number) => {
        const [weight = '', size = ''] = context.font.split(' ')
        const anchor = context.textAlign === 'center' ? 'middle' : context.textAlign
        const where = `${short(x)},${short(y)} ${short(Number.parseFloat(size))} ${weight} ${anchor}`
        this.said.push(`text “${text}” ${where} ${context.fillStyle} ${this.#halo}`.trim())
        this.#halo = ''
      },
    }
    return context as unknown as CanvasRenderingContext2D
  }
}

/** The marks of an SVG in the same words. */
export function drawnInSvg(svg: string): readonly string[] {
  const [, body = ''] = svg.split(/<rect [^>]*>/)
  return [...body.matchAll(/<(path|circle|text) ([^>]*?)\/?>(?:([^<]*)<\/text>)?/g)].map(
    ([, kind = '', attributes = '', words = '']) => {
      const of = Object.fromEntries(
        [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]),
      )
      return kind === 'text' ? textIn(of, words) : lineOf(pathIn(kind, of), inkIn(of))
    },
  )
}

type Attributes = Readonly<Record<string, string>>

function inkIn(of: Attributes): Ink {
  return {
    fill: of['fill'] ?? 'none',
    stroke: of['stroke'] ?? 'none',
    width: of['stroke-width'] ?? '',
    dash: `${of['stroke-dasharray'] ?? ''}${of['stroke-linecap'] ?? ''}`,
  }
}

function pathIn(kind: string, of: Attributes): string {
  if (kind === 'circle') return `circle ${of['cx']},${of['cy']} r ${of['r']}`
  const data = of['d'] ?? ''
  if (data.includes('A')) return sectorIn(data)
  const points = data
    .replace(/[MZ]/g, '')
    .split('L')
    .map((pair) => pair.replace(' ', ','))
  return `path ${points.join(' ')}${data.endsWith('Z') ? ' closed' : ''}`
}

/** From the top clockwise to where the last arc ends. */
function sectorIn(data: string): string {
  const [, startX = '', startY = '', radius = ''] = /^M(\S+) (\S+?)A(\S+)/.exec(data) ?? []
  const numbers = data.split(/[MA ]/).map(Number)
  const [endX = 0, endY = 0] = numbers.slice(-2)
  const x = Number(startX)
  const y = Number(startY) + Number(radius)
  const turn = Math.atan2(endX - x, y - endY) / (2 * Math.PI)
  const share = data.split('A').length === 3 ? 1 : (turn + 1) % 1
  // From the ends of an arc, each rounded.
  return `sector ${x.toFixed(1)},${y.toFixed(1)} r ${short(Number(radius))} ${share.toFixed(3)}`
}

function textIn(of: Attributes, words: string): string {
  const text = words
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
  const where = `${of['x']},${of['y']} ${of['font-size']} ${of['font-weight']} ${of['text-anchor']}`
  const halo = of['stroke'] === undefined ? '' : `halo ${of['stroke']} ${of['stroke-width']}`
  return `text “${text}” ${where} ${of['fill']} ${halo}`.trim()
}
