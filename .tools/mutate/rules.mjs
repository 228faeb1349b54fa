// How a formula can be wrong: each rule takes a node of the syntax tree and says what would stand there instead. A limit is moved,
// to twice itself or from 0 to 1; `<` for `<=` is not tried, since no hand measures the difference.

const binary = {
  '+': ['-'], '-': ['+'], '*': ['/'], '/': ['*'],
  '<': ['>'], '<=': ['>='], '>': ['<'], '>=': ['<='],
  '===': ['!=='], '!==': ['==='],
};
const functions = {
  tan: [['Math.sin', 'tan-for-sin'], ['((x) => 1 / Math.tan(x))', 'reciprocal']],
  sin: [['Math.cos', 'sine-for-cosine']], cos: [['Math.sin', 'sine-for-cosine']],
  asin: [['Math.acos', 'sine-for-cosine']], acos: [['Math.asin', 'sine-for-cosine']],
  atan: [['((x) => Math.PI / 2 - Math.atan(x))', 'reciprocal']],
  min: [['Math.max', 'least-for-most']], max: [['Math.min', 'least-for-most']],
  floor: [['Math.ceil', 'rounding']], ceil: [['Math.floor', 'rounding']], round: [['Math.floor', 'rounding']],
  sqrt: [['((x) => x)', 'root-dropped']], abs: [['((x) => x)', 'sign']],
};
/** Functions that do not tell their arguments apart. */
const symmetric = new Set(['max', 'min', 'hypot', 'distance', 'distance3', 'dot', 'dot3', 'add', 'add3', 'boxesMeet', 'isSlanting', 'gapBetween', 'axesApart']);
/** Tolerances of the arithmetic itself: doubling one changes nothing that a hand could measure. */
const leastFigure = 1e-5;

const isText = (node) => node.type === 'TemplateLiteral' || node.type === 'TaggedTemplateExpression' || (node.type === 'Literal' && typeof node.value === 'string')
  || (node.type === 'BinaryExpression' && node.operator === '+' && (isText(node.left) || isText(node.right)));
const isFigure = (node) => node.type === 'Literal' && typeof node.value === 'number' && Math.abs(node.value) > leastFigure;
const isZero = (node) => node.type === 'Literal' && node.value === 0;
/** A tolerance as it is written, alone or times a size. */
const isSmall = (node) => (node.type === 'Literal' && typeof node.value === 'number' && !isFigure(node) && node.value !== 0)
  || (node.type === 'UnaryExpression' && isSmall(node.argument))
  || (node.type === 'BinaryExpression' && node.operator === '*' && (isSmall(node.left) || isSmall(node.right)));

/** A node's own figure, or nothing. A comparison with a text or undefined is turned round by `condition` alone. */
const ofBinary = (node, text) => {
  const { left, right, operator } = node;
  if (isText(left) || isText(right)) return operator === '===' || operator === '!==' ? [{ rule: 'condition', to: swapOperator(node, text, binary[operator][0]) }] : [];
  // a + 1e-9 is a + 0 to any hand.
  if (isSmall(left) || isSmall(right)) return [];
  const found = (binary[operator] ?? []).map((other) => ({ rule: ruleOf(operator), to: swapOperator(node, text, other) }));
  if (operator === '+' || operator === '-') found.push({ rule: 'addend-dropped', to: text(left) });
  if (/^[<>]=?$/.test(operator)) found.push({ rule: 'limit', to: `(${text(left)}) ${operator} ${isZero(right) ? '1' : `2 * (${text(right)})`}` });
  return found;
};
const ruleOf = (operator) => {
  if (operator === '+' || operator === '-') return 'sign';
  return operator === '*' || operator === '/' ? 'factor' : 'condition';
};
const swapOperator = ({ left, right }, text, operator) => `(${text(left)}) ${operator} (${text(right)})`;

const isSimple = (node) => ['Identifier', 'MemberExpression'].includes(node.type)
  || (node.type === 'Literal' && typeof node.value === 'number') || (node.type === 'UnaryExpression' && node.operator === '-');

/** Rules by type of node: (node, text of a node) → what could stand there: `{ rule, to }`, or `{ rule, edits }` for several places at once. */
export const rules = {
  BinaryExpression: ofBinary,
  LogicalExpression: (node, text) => (node.operator === '??' ? [] : [{ rule: 'condition', to: `(${text(node.left)}) ${node.operator === '&&' ? '||' : '&&'} (${text(node.right)})` }]),
  UnaryExpression: (node, text) => {
    if (node.operator === '-') return [{ rule: 'sign', to: `(${text(node.argument)})` }];
    return node.operator === '!' ? [{ rule: 'condition', to: `!!(${text(node.argument)})` }] : [];
  },
  ConditionalExpression: (node, text) => [{ rule: 'condition', at: node.test, to: `!(${text(node.test)})` }],
  IfStatement: (node, text) => [{ rule: 'condition', at: node.test, to: `!(${text(node.test)})` }],
  CallExpression: (node, text) => {
    const found = [];
    const { callee } = node;
    if (callee.type === 'MemberExpression' && text(callee.object) === 'Math' && !callee.computed) {
      for (const [to, rule] of functions[callee.property.name] ?? []) found.push({ rule, at: callee, to });
    }
    const commutes = symmetric.has(callee.type === 'MemberExpression' ? callee.property.name : callee.name);
    const args = node.arguments;
    for (const [i, a] of (commutes ? [] : args.slice(0, -1).entries())) {
      const b = args[i + 1];
      if (isSimple(a) && isSimple(b) && text(a) !== text(b)) found.push({ rule: 'swapped-arguments', edits: [{ at: a, to: text(b) }, { at: b, to: text(a) }] });
    }
    return found;
  },
  /** A figure with a name of its own at the top of a file, in the folders whose constants are the trade's. */
  NamedFigure: (node, text) => [{ rule: 'figure-doubled', to: `2 * (${text(node)})` }],
};
