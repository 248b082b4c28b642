/**
 * How everything printed or drawn here looks: one sheet of type, spacing and colour for labels, the trip's paper and
 * charts. Chosen for a pouch in the hand and a phone in daylight: one condensed face, black on white, bars and rules
 * in place of grey tones, colour never alone.
 */

export const pointMm = 25.4 / 72;

export type Weight = 'regular' | 'bold';

export const colours = {
  ink: '#111111',
  paper: '#ffffff',
  /** Rules and grid lines; never text. */
  rule: '#8c8c8c',
  faint: '#d9d9d9',
} as const;

/**
 * For marks in charts: told apart with any common colour blindness and, by their lightness, in grey as well.
 * The palette of M. Okabe and K. Ito, "Color Universal Design" (2008); from memory.
 */
export const marks = {
  blue: '#0072b2',
  vermilion: '#d55e00',
  green: '#009e73',
  sky: '#56b4e9',
  orange: '#e69f00',
  purple: '#cc79a7',
} as const;

/** The order in which lines of one chart take colours and dashes: two lines never differ in colour alone. */
export const lineMarks = [
  { colour: marks.blue, dash: [] },
  { colour: marks.vermilion, dash: [14, 7] },
  { colour: marks.green, dash: [4, 6] },
  { colour: marks.purple, dash: [20, 6, 4, 6] },
  { colour: marks.orange, dash: [9, 5] },
  { colour: colours.ink, dash: [2, 5] },
] as const;

/** Space between a line of text and the next, in parts of the type size. */
export const leading = 1.16;

export const label = {
  paddingMm: 1.9,
  /** Type sizes in parts of the body's. */
  codeRatio: 2.5,
  mealRatio: 1.35,
  waterRatio: 1.4,
  bodyMostPt: 12,
  /**
   * Small print with an x-height of 0.9 mm or more, what EU Regulation 1169/2011, article 13 asks of labels under
   * 80 cm²; from memory. The face's x-height is 0.526 of its size.
   */
  bodyLeastPt: 4.9,
  smallPt: 6,
  /** Read at arm's length (70 cm) a capital of 3.8 mm stands 19 minutes of arc high; 5 is the least an eye resolves. */
  codeLeastPt: 16,
  /** Codes have capitals and figures only: no room below the line. */
  codeLeading: 0.92,
  barRatio: 1.1,
  barLeastPt: 6.5,
  /** The square of the two-dimensional code with its quiet margin, at most. */
  scanMostMm: 30,
  scanShare: 0.28,
  /** Side of one module where the label has room: two pixels of a page at half size and 150 dpi. */
  moduleMm: 0.66,
  gapMm: 0.4,
  /**
   * A label for camp: in the dusk, by a head torch and at 50 cm, an eye resolves a third to a fifth of what it does by
   * day (common practice, no source); at 13 pt a capital stands 21 minutes of arc high there, four times the least.
   */
  campMostPt: 30,
  campLeastPt: 13,
  campCodeRatio: 1.5,
  campWaterRatio: 1.25,
  campContentsRatio: 0.55,
} as const;

export const sheet = {
  marginMm: 13,
  bodyMostPt: 10.5,
  bodyLeastPt: 7.5,
  titleRatio: 1.9,
  dayRatio: 1.25,
  tickMm: 3.4,
} as const;

/** Pixels. A phone shows the 1080 across some 65 mm, so 27 of them are type of about 9 points. */
export const chart = {
  widthPx: 1080,
  /** The platform shows pictures below 1280 a side as they are. */
  mostHeightPx: 1270,
  marginPx: 44,
  titlePx: 42,
  textPx: 28,
  captionPx: 27,
  lineHeight: 1.25,
  linePx: 5,
  gridPx: 2,
  /** Area of a point, px², and from how many on only the line is drawn. */
  pointArea: 190,
  mostPoints: 60,
} as const;
