/** Small faults to be put into a piece of code, one at a time, to see whether a test notices. */
import { parseAst } from 'vite';

export type FaultKind = 'comparison' | 'constant' | 'dropped term' | 'dropped guard' | 'swapped unit';

/** One fault: what stands from `start` to `end` of the code becomes `now`. */
export interface CodeFault {
  readonly kind: FaultKind;
  readonly start: number;
  readonly end: number;
  readonly was: string;
  readonly now: string;
  /** The named function or constant it stands in, '' at the top of the file. */
  readonly within: string;
}

/** What of a syntax tree (ESTree) is looked at here. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && 'start' in value;

const childrenOf = (node: Node): [string, Node][] =>
  Object.entries(node).flatMap(([field, value]): [string, Node][] =>
    Array.isArray(value)
      ? value.filter(isNode).map((child): [string, Node] => [field, child])
      : isNode(value)
        ? [[field, value]]
        : [],
  );

const otherComparison: Readonly<Record<string, string>> = {
  '<': '<=',
  '<=': '<',
  '>': '>=',
  '>=': '>',
  '===': '!==',
  '!==': '===',
};
const dropsRight = new Set(['+', '-', '*', '/', '%', '&&', '||', '??']);
const otherCall: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  some: 'every',
  every: 'some',
};
const droppedCalls = new Set(['filter', 'toSorted', 'sort', 'toReversed', 'slice']);
/** A name that says its unit; a factor of 1000 is gram for kilogram, millilitre for litre, and out of scale for the rest. */
const unitName =
  /(?<=[a-z0-9])(?:G|Kg|Mg|Ml|L|Mm|Cm2?|Kcal|Kj|Hours|Min|Minutes|Days|C|Pa|Hpa|M|Fraction|Share)$/;
const readIn: Readonly<Record<string, readonly string[]>> = {
  CallExpression: ['arguments'],
  BinaryExpression: ['left', 'right'],
  ReturnStatement: ['argument'],
  ConditionalExpression: ['consequent', 'alternate'],
  ArrowFunctionExpression: ['body'],
  VariableDeclarator: ['init'],
};

const nameOf = (node: unknown): string =>
  isNode(node) && node.type === 'Identifier'
    ? String(node['name'])
    : isNode(node) && node.type === 'MemberExpression'
      ? nameOf(node['property'])
      : '';

const isOneWayOut = (node: unknown): boolean =>
  isNode(node) &&
  (node.type === 'ReturnStatement' ||
    node.type === 'ThrowStatement' ||
    node.type === 'ContinueStatement' ||
    (node.type === 'BlockStatement' &&
      (node['body'] as Node[]).length === 1 &&
      isOneWayOut((node['body'] as Node[])[0])));

/** Every fault of the fixed list that this code (plain JavaScript) has room for, in the order of the code. */
export function faultsOf(code: string): CodeFault[] {
  const found: CodeFault[] = [];
  const at = (node: Node): string => code.slice(node.start, node.end);
  const visit = (node: Node, parent: Node | null, field: string, within: string): void => {
    const change = (kind: FaultKind, part: Node, now: string): void => {
      found.push({ kind, start: part.start, end: part.end, was: at(part), now, within });
    };
    if (node.type === 'ImportDeclaration' || node.type === 'ExportAllDeclaration') return;
    const operator = typeof node['operator'] === 'string' ? node['operator'] : '';
    const { left, right } = node as { left?: unknown; right?: unknown };
    if (
      (node.type === 'BinaryExpression' || node.type === 'LogicalExpression') &&
      isNode(left) &&
      isNode(right)
    ) {
      const other = otherComparison[operator];
      if (other !== undefined) change('comparison', node, `${at(left)} ${other} ${at(right)}`);
      if (dropsRight.has(operator)) change('dropped term', node, `(${at(left)})`);
    }
    if (node.type === 'Literal' && typeof node['value'] === 'number') {
      const value = node['value'];
      change('constant', node, String(Number.isInteger(value) ? value + 1 : value * 1.1));
    }
    if (node.type === 'IfStatement' && !isNode(node['alternate']) && isOneWayOut(node['consequent'])) {
      change('dropped guard', node, '');
    }
    const callee = node['callee'];
    if (node.type === 'CallExpression' && isNode(callee) && callee.type === 'MemberExpression') {
      const property = callee['property'] as Node;
      const other = otherCall[nameOf(property)];
      if (other !== undefined) change('comparison', property, other);
      if (droppedCalls.has(nameOf(property))) change('dropped guard', node, at(callee['object'] as Node));
    }
    if (unitName.test(nameOf(node)) && parent !== null && (readIn[parent.type] ?? []).includes(field)) {
      change('swapped unit', node, `(${at(node)} * 1000)`);
    }
    const inside =
      (node.type === 'FunctionDeclaration' || node.type === 'VariableDeclarator') && nameOf(node['id']) !== ''
        ? nameOf(node['id'])
        : within;
    for (const [name, child] of childrenOf(node)) visit(child, node, name, inside);
  };
  visit(parseAst(code) as unknown as Node, null, '', '');
  return found;
}

/** The code with the one fault in it. */
export const withFault = (code: string, fault: CodeFault): string =>
  code.slice(0, fault.start) + fault.now + code.slice(fault.end);
