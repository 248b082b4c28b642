import { Refusal } from '#core/refusal.ts';
import type { LabelFacts } from './facts.ts';
import { type Block, labelBlocks } from './label-text.ts';
import { colours, label, pointMm } from './look.ts';
import type { Pdf } from './pdf.ts';
import { quietModules, scanCode } from './scan-code.ts';
import { type Line, lines } from './typeset.ts';

export interface Box {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

interface Placed {
  readonly line: Line;
  readonly block: Block;
  readonly sizePt: number;
  /** From the label's top, mm. */
  readonly topMm: number;
  readonly heightMm: number;
  readonly barMm: number;
}

/** The square of the code with its margin, at the label's top right. */
function scanSide({ widthMm, heightMm }: Box, modules: number): number {
  const wanted = Math.max(widthMm * label.scanShare, modules * label.moduleMm);
  return Math.min(heightMm, wanted, label.scanMostMm);
}

/**
 * Draws one label into its box: type as large as all of it allows, lines beside the code short, below it long.
 * @throws Refusal 'label-too-small' when it does not fit at the smallest type; nothing is ever cut
 */
export function drawLabel(pdf: Pdf, facts: LabelFacts, box: Box): void {
  const code = scanCode(facts.scan);
  const modules = code.length + 2 * quietModules;
  const side = scanSide(box, modules);
  const placed = fitted(facts, box, side);
  const moduleMm = side / modules;
  const quietMm = quietModules * moduleMm;
  pdf.modules(code, box.xMm + box.widthMm - side + quietMm, box.yMm + quietMm, moduleMm);
  for (const { line, block, sizePt, topMm, heightMm, barMm } of placed) {
    const top = box.yMm + topMm;
    if (block.isBar) pdf.box(box.xMm + label.paddingMm, top, barMm, heightMm);
    const x = box.xMm + label.paddingMm + (block.isBar ? barInsetMm : 0);
    const baseline = top + (heightMm + sizePt * pointMm * capitals) / 2;
    pdf.line(line, x, baseline, sizePt, block.isBar ? colours.paper : colours.ink);
  }
}

const capitals = 0.688;
const barInsetMm = 0.7;

function fitted(facts: LabelFacts, box: Box, scanMm: number): Placed[] {
  const [mostPt, leastPt] = facts.isForCamp
    ? [label.campMostPt, label.campLeastPt]
    : [label.bodyMostPt, label.bodyLeastPt];
  for (let step = 0; ; step++) {
    const bodyPt = Math.max(leastPt, mostPt - step * 0.25);
    for (const blocks of labelBlocks(facts, bodyPt)) {
      const placed = layOut(blocks, box, scanMm, bodyPt);
      if (placed) return placed;
    }
    if (bodyPt === leastPt) break;
  }
  throw new Refusal(
    'label-too-small',
    `${facts.code} says more than a label of ${box.widthMm} x ${box.heightMm} mm holds in type that can be read. Take larger labels, such as "single ${facts.isForCamp ? '150 x 100' : '100 x 60'} mm". Nothing was drawn.`,
  );
}

/** Where every line goes at one type size; undefined when they do not fit. */
function layOut(blocks: readonly Block[], box: Box, scanMm: number, bodyPt: number): Placed[] | undefined {
  const fullMm = box.widthMm - 2 * label.paddingMm;
  const besideMm = box.widthMm - scanMm - label.paddingMm;
  const placed: Placed[] = [];
  let topMm = label.paddingMm * 0.75;
  for (const block of blocks) {
    const sizePt = Math.max(block.leastPt, bodyPt * block.ratio);
    const heightMm = sizePt * block.leading * pointMm;
    const inset = block.isBar ? 2 * barInsetMm : 0;
    // A line stands beside the code as long as any part of it reaches up there.
    const roomMm = (no: number) => (topMm + no * heightMm < scanMm ? besideMm : fullMm);
    const set = lines(
      block.text,
      { weight: block.weight, sizePt },
      (no) => (roomMm(no) - inset) / pointMm,
      block.base,
    );
    set.forEach((line, no) => {
      if (line.widthPt > (roomMm(no) - inset) / pointMm) topMm = Number.POSITIVE_INFINITY;
      placed.push({ line, block, sizePt, topMm: topMm + no * heightMm, heightMm, barMm: roomMm(no) });
    });
    topMm += set.length * heightMm + label.gapMm * (bodyPt / label.bodyMostPt);
    if (topMm > box.heightMm - label.paddingMm * 0.6) return undefined;
  }
  return placed;
}
