// Fields of the project file. What was found of a place stands at its field; what stands in a field while it is typed in is left alone.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { node, put, steps, value, without, withoutEmpty } from "/project.js";
import { choices } from "/schema.js";

export const idOf = path => `f-${path.replace(/[^\w]+/g, "-")}`;

export function shown(text, path) {
  const found = node(text, path);
  if (!found || found.type === "null") return "";
  if (found.type === "number") return text.slice(found.offset, found.offset + found.length);
  return found.type === "string" || found.type === "boolean" ? String(found.value) : "";
}

// Whether one types in a field at or under one of some places: what holds it stays open then, emptied or not.
export const isTyping = paths => paths.some(p => document.activeElement?.dataset?.path?.startsWith(p));

export const problemsAt = (answer, path) => (answer?.problems ?? []).filter(p => p.path === path || p.path.startsWith(`${path}.`) || p.path.startsWith(`${path}[`));

// Fields whose text follows the project, but not while one types in them.
export function fill(root, text) {
  for (const input of root.querySelectorAll("[data-path]")) {
    if (input === document.activeElement && input.type !== "checkbox" && input.tagName !== "SELECT") continue;
    const now = shown(text, input.dataset.path);
    if (input.type === "checkbox") input.checked = now === "true";
    else if (input.value !== now) input.value = now;
  }
}

function taken(work, field, said) {
  const path = field.path;
  work.edit(text => {
    const [whole, blank] = field.whole ?? [];
    if (whole && said.trim() === "") return put(text, whole, null);
    if (whole && !value(text, whole)) return put(put(text, whole, blank), path, said.trim());
    if (said.trim() === "" && !field.keepsText) return field.isAsked && node(text, path) ? put(text, path, null) : withoutEmpty(text, path, field.group);
    let next = put(text, path, field.isText ? said : said.trim(), field.isText);
    if (field.replaces && value(next, field.replaces) === null) next = without(next, field.replaces);
    return next;
  });
}

export function field(work, f) {
  const id = idOf(f.path);
  const found = problemsAt(work.answer, f.problemsOf ?? f.path);
  const how = found.length ? "" : f.how;
  const described = [how ? `${id}-how` : "", found.length ? `${id}-wrong` : ""].filter(Boolean).join(" ") || nothing;
  const input = f.choices
    ? html`<select id=${id} data-path=${f.path} aria-describedby=${described} aria-invalid=${found.length ? "true" : nothing} @change=${e => taken(work, f, e.target.value)}>
        <option value="">${f.unsaid ?? "not said"}</option>${f.choices.map(c => html`<option value=${c}>${c}</option>`)}</select>`
    : f.isLong
      ? html`<textarea id=${id} data-path=${f.path} rows="3" aria-describedby=${described} aria-invalid=${found.length ? "true" : nothing} @input=${e => taken(work, f, e.target.value)}></textarea>`
      : html`<span class="with-unit"><input id=${id} data-path=${f.path} inputmode=${f.isCount ? "numeric" : nothing} autocomplete="off" spellcheck="false"
          list=${f.list ?? nothing} placeholder=${f.blankSays ?? nothing} aria-describedby=${described} aria-invalid=${found.length ? "true" : nothing} @input=${e => taken(work, f, e.target.value)}>${f.unit ? html`<span class="unit">${f.unit}</span>` : nothing}</span>`;
  return html`<div class="field ${found.length ? "wrong" : ""} ${f.isWide ? "wide" : ""}" data-place=${f.place ?? nothing}>
    <label for=${id}>${f.letter ? html`<span class="letter" aria-hidden="true">${f.letter}</span> ` : nothing}${f.label}</label>${input}
    ${how ? html`<span class="how" id="${id}-how">${how}</span>` : nothing}
    ${found.length ? html`<span class="found" id="${id}-wrong">${found.map(p => html`<span>${p.what} ${p.do}</span>`)}</span>` : nothing}
    ${f.leave && value(work.text, f.whole[0]) ? html`<button type="button" class="link" @click=${() => work.edit(text => put(text, f.whole[0], null))}>${f.leave}</button>` : nothing}
  </div>`;
}

export function yesNo(work, path, label, how) {
  const id = idOf(path);
  return html`<div class="field yes-no"><input type="checkbox" id=${id} data-path=${path} aria-describedby=${how ? `${id}-how` : nothing}
    @change=${e => work.edit(text => put(text, path, e.target.checked))}><label for=${id}>${label}</label>${how ? html`<span class="how" id="${id}-how">${how}</span>` : nothing}</div>`;
}

export const choice = (work, path, label, unsaid, group) => field(work, { path, label, unsaid, group, choices: choices(steps(path)) });

// Two values in a list, lengths unless they are text; one alone where the file may say so.
export function pair(work, path, labels, { unit, mayBeOne, group, isText } = {}) {
  const both = value(work.text, path);
  const isOne = both !== undefined && both !== null && !Array.isArray(both);
  const found = problemsAt(work.answer, path);
  const taken = said => (said.trim() === "" ? null : said.trim());
  const set = (index, said) => work.edit(text => {
    const now = value(text, path);
    if (Array.isArray(now)) {
      const next = put(text, `${path}[${index}]`, taken(said), isText);
      return value(next, path).every(v => v === null) ? withoutEmpty(next, path, group) : next;
    }
    if (mayBeOne && index === 0) return said.trim() === "" ? without(text, path) : put(text, path, said.trim());
    const made = put(text, path, [null, null]);
    const kept = shown(text, path);
    return put(kept ? put(made, `${path}[0]`, kept) : made, `${path}[${index}]`, taken(said), isText);
  });
  return html`<div class="pair">${labels.map((label, i) => {
    const at = isOne && i === 0 ? path : `${path}[${i}]`;
    const id = `${idOf(path)}-${i}`;
    return html`<div class="field ${found.length ? "wrong" : ""}"><label for=${id}>${label}</label><span class="with-unit"><input id=${id} data-path=${at} autocomplete="off"
      aria-describedby=${found.length ? `${idOf(path)}-wrong` : nothing} aria-invalid=${found.length ? "true" : nothing} @input=${e => set(i, e.target.value)}>${unit ? html`<span class="unit">${unit}</span>` : nothing}</span></div>`;
  })}${found.length ? html`<span class="found" id="${idOf(path)}-wrong">${found.map(p => html`<span>${p.what} ${p.do}</span>`)}</span>` : nothing}</div>`;
}

// One figure for both ways of the cloth, or one along and one across the rows.
export function bothWays(work, path, label, how) {
  const said = value(work.text, path);
  if (said && typeof said === "object") return html`
    ${field(work, { path: `${path}.along`, label: `${label} along the rows`, how, group: path })}
    <div>${field(work, { path: `${path}.across`, label: `${label} across the rows`, group: path })}
      <button type="button" class="link" @click=${() => work.edit(text => put(text, path, shown(text, `${path}.along`) || null))}>The same both ways</button></div>`;
  return html`<div>${field(work, { path, label, how })}
    <button type="button" class="link" @click=${() => work.edit(text => {
      const one = shown(text, path) || null;
      return put(put(put(text, path, {}), `${path}.along`, one), `${path}.across`, one);
    })}>${label} differently along and across</button></div>`;
}

// A list in the file: the fields of each entry, one more, one less; no list where it is empty.
export function list(work, path, { what, legend, entry, blank }) {
  const entries = value(work.text, path) ?? [];
  const found = (work.answer?.problems ?? []).filter(p => p.path === path);
  return html`${Array.isArray(entries) ? entries.map((_, i) => html`<fieldset class="row entry"><legend>${legend(i, entries[i] ?? {})}</legend>${entry(`${path}[${i}]`, i)}
      <button type="button" class="less" @click=${() => work.edit(text => ((value(text, path) ?? []).length > 1 ? without(text, `${path}[${i}]`) : without(text, path)))}>Leave out<span class="unseen"> ${legend(i, entries[i] ?? {})}</span></button></fieldset>`) : nothing}
    ${found.map(p => html`<p class="found">${p.what} ${p.do}</p>`)}
    <p><button type="button" data-adds=${path} @click=${() => work.edit(text => put(text, `${path}[-1]`, blank((value(text, path) ?? []).length)))}>Add ${what}</button></p>`;
}

// Every problem, leading to its field.
export function problems(work) {
  const found = work.answer?.problems ?? [];
  return html`<section class="findings problems" aria-labelledby="problems-head" ?hidden=${found.length === 0}>
    <h2 id="problems-head"><span role="status">${found.length === 1 ? "1 problem" : `${found.length} problems`} to mend before a plan can be made</span></h2>
    <ul tabindex="0">${found.map(p => html`<li><button type="button" class="link" data-goes=${p.path} @click=${() => go(p)}>${place(p)}</button> ${p.what} ${p.do}</li>`)}</ul></section>`;
}

export function notes(work) {
  const found = work.answer?.notes ?? [];
  return html`<section class="findings notes" aria-labelledby="notes-head" ?hidden=${found.length === 0}>
    <h2 id="notes-head">${found.length === 1 ? "1 note" : `${found.length} notes`}</h2>
    <ul tabindex="0">${found.map(n => html`<li><strong>${place(n)}</strong> ${n.what} ${n.do}</li>`)}</ul></section>`;
}

// A place in words: piece.unblocked.sides.top is "Unblocked, sides, top".
function place(p) {
  const said = p.path.replace(/^piece\./, "").replace(/([a-z])([A-Z])/g, (_, a, b) => `${a} ${b.toLowerCase()}`).replaceAll(".", ", ").replace(/\[(\d+)\]/g, (_, n) => ` ${Number(n) + 1}`);
  return `${said ? said.charAt(0).toUpperCase() + said.slice(1) : "The file"}${p.line ? ` (line ${p.line})` : ""}:`;
}

function go(problem) {
  for (let at = problem.path; at; at = at.slice(0, Math.max(at.lastIndexOf("."), at.lastIndexOf("["), 0))) {
    const input = [...document.querySelectorAll("[data-path]")].find(i => i.dataset.path === at || i.dataset.path.startsWith(`${at}[`) || i.dataset.path.startsWith(`${at}.`));
    if (!input) continue;
    for (let box = input.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
    input.focus();
    return;
  }
  document.dispatchEvent(new CustomEvent("to-line", { detail: problem.line ?? 1 }));
}
