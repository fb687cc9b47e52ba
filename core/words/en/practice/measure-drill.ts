const gaugeUnits = { mm: 'mm', in: 'inches' }

/** Instruments that are read in practice. */
export const measureDrill = {
  instruments: {
    feelers: 'Feeler gauge',
    strip: 'Plastic gauge',
    micrometer: 'Micrometer',
    'bore-gauge': 'Bore gauge',
  },
  drawn: ({ instrument, unit }: { readonly instrument: string; readonly unit: 'mm' | 'in' }) =>
    `${instrument}, in ${gaugeUnits[unit]}`,
  asks: {
    feelers: 'These blades just go in together. How wide is the gap?',
    strip: 'Move the scale until a band is as wide as the strip. What was the clearance?',
    micrometer: 'What does the micrometer read?',
    'bore-gauge':
      'The gauge was set to 0 in the ring and now stands in the bore, at its turning point. How large is the bore?',
  },
  hints: {
    feelers: null,
    strip: null,
    micrometer:
      'Read the sleeve up to the edge, then the thimble at the long line, then the line of the sleeve above it that meets one of the thimble.',
    'bore-gauge': 'A smaller bore pushes the plunger in, and the pointer goes clockwise.',
  },
  zoom: 'Two fingers, the wheel, or + and − show it larger.',
  range: (of: { readonly from: string; readonly to: string; readonly unit: string }) =>
    `${of.from} to ${of.to} ${of.unit}`,
  dial: {
    count: ({ count, unit }: { readonly count: string; readonly unit: string }) => `${count} ${unit}`,
    ring: ({ ring, unit }: { readonly ring: string; readonly unit: string }) => `ring ${ring} ${unit}`,
  },
  moveScale: { up: 'Scale up', down: 'Scale down' },
  reads: ({ unit }: { readonly unit: 'mm' | 'in' }) => `Reading, in ${gaugeUnits[unit]}`,
  unreadable: 'Type a number, with a point or a comma.',
  /** What is seen of an instrument, part by part, for somebody who cannot see it. */
  seen: {
    range: ({ range }: { readonly range: string }) => `Micrometer for ${range}`,
    sleeve: ({ at, unit }: { readonly at: string; readonly unit: string }) =>
      `Sleeve: the last line in sight is that of ${at} ${unit}`,
    thimble: ({ line }: { readonly line: number }) => `Thimble: the long line stands at ${line} or past it`,
    vernier: ({ line }: { readonly line: number }) => `Vernier: line ${line} meets a line of the thimble`,
    ring: ({ ring, unit }: { readonly ring: string; readonly unit: string }) =>
      `Bore gauge, set to 0 in a ring of ${ring} ${unit}`,
    pointer: (of: {
      readonly lines: number
      readonly count: string
      readonly unit: string
      readonly way: 'clockwise' | 'anticlockwise' | 'none'
    }) =>
      of.way === 'none'
        ? 'Pointer at 0'
        : `Pointer ${of.lines} ${of.lines === 1 ? 'line' : 'lines'} of ${of.count} ${of.unit} ${of.way} from 0`,
  },
  strip: {
    beside: (of: {
      readonly band: string
      readonly unit: string
      readonly fit: 'alike' | 'narrower' | 'wider'
    }) => {
      const fits = {
        alike: 'is as wide as the strip',
        narrower: 'is narrower than it',
        wider: 'is wider than it',
      }
      return `Beside the strip: the band of ${of.band} ${of.unit}, which ${fits[of.fit]}`
    },
  },
  feeler: {
    blade: ({ blade, unit }: { readonly blade: string; readonly unit: string }) =>
      `Blade of ${blade} ${unit}`,
  },
  off: (of: { readonly by: string; readonly unit: string; readonly way: 'more' | 'less' }) =>
    `${of.by} ${of.unit} too ${of.way === 'more' ? 'much' : 'little'}.`,
  misreads: {
    turn: ({ turn, unit }: { readonly turn: string; readonly unit: string }) =>
      `A turn of the thimble is ${turn} ${unit}: look which line of the sleeve is the last in sight.`,
    base: ({ range }: { readonly range: string }) =>
      `This micrometer is for ${range}: what it shows comes on top of the lower end.`,
    vernier:
      'Sleeve and thimble are right. The last digit is the number of the line above the long one that meets a line of the thimble.',
    thimble: 'The sleeve is right. On the thimble the line counts that the long line has passed last.',
    sign: 'Turned the wrong way: clockwise the plunger was pushed in, and the bore is smaller than the ring.',
    ring: 'That is what the dial shows: it is added to the ring, or taken off it.',
    lines: 'The way is right. Count the lines from the last number that the pointer has passed.',
    blade: 'One of the blades is left out of the sum.',
    band: 'Another band of the scale. The wider the strip, the smaller the clearance.',
    other: 'Read it part by part, and add up.',
  },
}
