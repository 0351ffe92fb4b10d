// The project file's own text is the state: it is read and changed place by place, comments and layout kept.
import { parseTree, findNodeAtLocation, getNodeValue, modify, applyEdits } from "/vendor/jsonc-parser/main.js";

const formatting = { insertSpaces: true, tabSize: 2, eol: "\n" };
const lenient = { allowTrailingComma: true, disallowComments: false };

// "piece.unblocked.edges[2].bow" as steps. Edge names with spaces or points are no trouble: callers may give steps.
export function steps(path) {
  if (Array.isArray(path)) return path;
  return path.split(".").flatMap(part => {
    const [name, ...indices] = part.split("[");
    return [...(name ? [name] : []), ...indices.map(i => Number.parseInt(i, 10))];
  });
}

let lastText = null;
let lastTree = null;

function tree(text) {
  if (text !== lastText) [lastText, lastTree] = [text, parseTree(text, [], lenient)];
  return lastTree;
}

export function isReadable(text) {
  return tree(text)?.type === "object";
}

export function node(text, path) {
  const root = tree(text);
  return root ? findNodeAtLocation(root, steps(path)) : undefined;
}

export function value(text, path) {
  const found = node(text, path);
  return found ? getNodeValue(found) : undefined;
}

// Text as typed goes in as a number where it is one, else as text; numbers keep the digits that were typed.
export function withValue(text, path, said, isText = false) {
  const at = steps(path);
  const root = tree(text);
  if (!root) return text;
  const typed = !isText && typeof said === "string" && /^-?(0|[1-9]\d*)(\.\d+)?$/.test(said.trim());
  let changed = applyEdits(text, modify(text, at, typed ? Number(said) : said, { formattingOptions: formatting, isArrayInsertion: false }));
  if (typed) {
    const put = node(changed, at);
    if (put?.type === "number") changed = changed.slice(0, put.offset) + said.trim() + changed.slice(put.offset + put.length);
  }
  return changed;
}

export function without(text, path) {
  const at = steps(path);
  return node(text, at) ? applyEdits(text, modify(text, at, undefined, { formattingOptions: formatting })) : text;
}

// The same, and what holds nothing more goes with it, up to and with a part of the file.
export function withoutEmpty(text, path, group) {
  let changed = without(text, path);
  if (!group) return changed;
  const isEmpty = found => found && typeof found === "object" && Object.values(found).every(v => v === null || isEmpty(v));
  for (let at = steps(path).slice(0, -1); at.length >= steps(group).length && isEmpty(value(changed, at)); at = at.slice(0, -1)) changed = without(changed, at);
  return changed;
}

// Makes every null on the way to a place an object, so that something can be put there.
export function withWay(text, path) {
  const at = steps(path);
  let changed = text;
  for (let i = 1; i < at.length; i++) {
    const found = node(changed, at.slice(0, i));
    if (found && found.type === "null") changed = applyEdits(changed, modify(changed, at.slice(0, i), typeof at[i] === "number" ? [] : {}, { formattingOptions: formatting }));
  }
  return changed;
}

export function put(text, path, said, isText = false) {
  return withValue(withWay(text, path), path, said, isText);
}

// The text with each of some numbers replaced; the last first, so that places before it stay right.
export function withNumbersAs(text, isTurned, words) {
  const found = [];
  (function walk(at, nodeHere) {
    if (!nodeHere) return;
    if (nodeHere.type === "object") for (const p of nodeHere.children) walk([...at, p.children[0].value], p.children[1]);
    else if (nodeHere.type === "array") nodeHere.children.forEach((c, i) => walk([...at, i], c));
    else if (nodeHere.type === "number" && isTurned(at)) found.push(nodeHere);
  })([], tree(text));
  let changed = text;
  for (const n of found.sort((a, b) => b.offset - a.offset))
    changed = changed.slice(0, n.offset) + JSON.stringify(words(text.slice(n.offset, n.offset + n.length))) + changed.slice(n.offset + n.length);
  return changed;
}

export function lineOffset(text, line) {
  let at = 0;
  for (let i = 1; i < line; i++) at = text.indexOf("\n", at) + 1 || at;
  return at;
}
