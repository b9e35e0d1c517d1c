import { expectedValue } from '@scantling/rules';
import ts from 'typescript';

const numberText = (node: ts.Expression): string | null => {
  if (ts.isNumericLiteral(node)) return node.getText().replaceAll('_', '');
  const negative = ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken;
  return negative && ts.isNumericLiteral(node.operand) ? `-${numberText(node.operand)}` : null;
};

function numberProblem(printed: string, value: unknown): boolean {
  if (typeof value !== 'number' || Object.is(value, -0)) return true;
  const { value: published, tolerance } = expectedValue(printed);
  // A whole number is a count: it is not read as rounded to the unit.
  const allowed = /[.e]/.test(printed) ? tolerance : 0;
  return !(Math.abs(value - published) <= allowed + 1e-12 * Math.abs(published));
}

function exactText(node: ts.Expression): { value: unknown } | null {
  if (ts.isStringLiteralLike(node)) return { value: node.text };
  if (node.kind === ts.SyntaxKind.TrueKeyword) return { value: true };
  if (node.kind === ts.SyntaxKind.FalseKeyword) return { value: false };
  return node.kind === ts.SyntaxKind.NullKeyword ? { value: null } : null;
}

function objectDifference(node: ts.ObjectLiteralExpression, value: unknown, at: string): string | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return `${at || 'it'} is not an object`;
  const rest = new Set(Object.keys(value));
  for (const property of node.properties) {
    if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name)) return 'unreadable';
    const name = property.name.text;
    if (!rest.delete(name)) return `${at}.${name} is missing`;
    const problem = difference(property.initializer, value[name as keyof typeof value], `${at}.${name}`);
    if (problem) return problem;
  }
  return rest.size > 0 ? `${at}.${[...rest].join()} is not mentioned` : null;
}

function difference(node: ts.Expression, value: unknown, at: string): string | null {
  const shown = `${at || 'it'} is ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`;
  const printed = numberText(node);
  if (printed !== null) return numberProblem(printed, value) ? shown : null;
  const exact = exactText(node);
  if (exact) return Object.is(value, exact.value) ? null : shown;
  if (ts.isObjectLiteralExpression(node)) return objectDifference(node, value, at);
  if (!ts.isArrayLiteralExpression(node)) return 'unreadable';
  if (!Array.isArray(value)) return `${at || 'it'} is not a list`;
  if (value.length !== node.elements.length) return `${at || 'it'} has ${value.length} items`;
  for (const [i, element] of node.elements.entries()) {
    const problem = difference(element, value[i], `${at}[${i}]`);
    if (problem) return problem;
  }
  return null;
}

/**
 * How a value differs from what a line of documentation prints; `null` where it does not. Objects and lists are
 * compared in full, texts exactly, decimals to half of their last printed digit, whole numbers exactly.
 */
export function differenceFrom(literal: string, value: unknown): string | null {
  const text = `(${literal})`;
  const [statement] = ts.createSourceFile('literal.ts', text, ts.ScriptTarget.ES2023, true).statements;
  const inside =
    statement?.end === text.length &&
    ts.isExpressionStatement(statement) &&
    ts.isParenthesizedExpression(statement.expression)
      ? difference(statement.expression.expression, value, '')
      : 'unreadable';
  if (inside === null) return null;
  return inside === 'unreadable'
    ? `${literal} cannot be read as a value`
    : `${inside}, documented ${literal}`;
}
