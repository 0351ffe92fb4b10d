// See: the plan on its mats, part by part, and what it takes.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { notes, problems } from "/fields.js";
import { put } from "/project.js";
import { show, switchLayers, Viewport } from "/pictures.js";

const off = new Set(JSON.parse(localStorage.getItem("blocking-templates:layers-off") ?? "null") ?? ["sheets", "stretch", "predicted edge"]);
const words = { "outline and marks": "outline and marks", arrows: "pulls" };

const capital = words => words.charAt(0).toUpperCase() + words.slice(1);

export function counts(plan) {
  const line = (name, said) => html`<div><dt>${name}</dt><dd>${said}</dd></div>`;
  return html`<dl class="counts">
    ${line("Mats", html`<b>${plan.mats}</b> ${plan.matField}`)}
    ${plan.supplies.map(s => line(capital(s.name), html`<b>${s.layOut}</b>${s.spare ? ` and ${s.spare} spare` : ""}${s.buy ? `, ${s.buy} to buy` : ""}`))}
    ${plan.guides.map(g => line(`Sheets of ${g.paper}`, html`<b>${g.sheets}</b>${g.joining ? ` and ${g.joining} to join them` : ""}, ${g.landscape ? "landscape" : "portrait"}`))}
    ${line("Largest pull", plan.largestPull ? html`<b>${plan.largestPull}</b>` : "not known without the unblocked size")}
    ${line("Worst scallop", plan.worstScallop ? html`${plan.hasCloth ? "" : "at most "}<b>${plan.worstScallop}</b>` : "not known")}
  </dl>`;
}

// While the cloth is computed what is shown is the geometry alone.
export function clothWords(work) {
  if (!work.answer?.plan || work.answer.isFinal) return nothing;
  return html`<p class="hint cloth"><label>The cloth is being computed; pins and counts may still change. ${work.progress?.words ?? ""} <progress max="1" .value=${work.progress?.part ?? 0}></progress></label></p>`;
}

// Several sizes, or a pair: which of them is shown.
export function whichPlan(work) {
  if (work.plans.length < 2) return nothing;
  return html`<div class="field"><label for="which">Shown</label><select id="which" @change=${e => { work.choose(Number(e.target.value)); work.changed(); }}>
    ${work.plans.map((p, i) => html`<option value=${i} ?selected=${i === work.part}>${p.part}</option>`)}</select></div>`;
}

export function see(work, page) {
  const plan = work.answer?.plan;
  if (!plan) return html`<h1 tabindex="-1">See</h1>${problems(work)}<p class="hint">The drawing comes as soon as the problems are mended.</p>`;
  return html`<h1 tabindex="-1">See</h1>
    <div class="see">
      <div class="see-drawing">
        ${whichPlan(work)}
        <fieldset class="layers"><legend>Show</legend>${plan.layers.map(name => html`<label><input type="checkbox" .checked=${!off.has(name)} @change=${e => toggle(name, e.target.checked, page)}> ${words[name] ?? name}</label>`)}</fieldset>
        <div class="view" id="view" tabindex="0" role="application" aria-label="Drawing of the piece on its mats. Plus and minus magnify, arrow keys move, 0 shows all.">
          <div class="paper" data-picture="view"></div>
        </div>
        <div class="buttons"><button type="button" @click=${() => page.viewport?.by(1.4)}>Closer</button><button type="button" @click=${() => page.viewport?.by(1 / 1.4)}>Farther</button><button type="button" @click=${() => page.viewport?.whole()}>All</button></div>
        ${clothWords(work)}
      </div>
      <div class="see-beside">
        <section class="card" aria-labelledby="counts-head"><h2 id="counts-head">What it takes</h2>${counts(plan)}</section>
        ${notes(work)}
      </div>
    </div>
    <section class="card" aria-labelledby="edges-head"><h2 id="edges-head">Edges</h2>
      ${table("Table of the edges", ["Edge", "Finished", "Pinned", "Unblocked", "Stretch", "Pins", "Spaced"], plan.edges.map(e => [e.name, e.finished, e.pinned, e.unblocked ?? "–", e.stretch ?? "–", e.pins, e.spacing]))}</section>
    ${waysToHold(work, plan)}
    ${plan.wires.length ? html`<section class="card" aria-labelledby="wires-head"><h2 id="wires-head">Wires</h2>
      <p class="hint">Run each wire through its edge before the piece is laid down. Wire ends are sharp: mind eyes and hands, and cap or bend them.</p>
      ${table("Table of the wires", ["Wire", "Edge", "Length", "From", "To", "Through", "May sag"], plan.wires.map(w => [w.number, w.edge, w.length, w.from, w.to, w.through, w.maySag]))}</section>` : nothing}`;
}

const table = (name, heads, rows) => html`<div class="table" tabindex="0" role="region" aria-label=${name}><table>
  <thead><tr>${heads.map(h => html`<th scope="col">${h}</th>`)}</tr></thead>
  <tbody>${rows.map(([head, ...cells]) => html`<tr><th scope="row">${head}</th>${cells.map(c => html`<td>${c}</td>`)}</tr>`)}</tbody></table></div>`;

// Pins, combs and wires side by side for each edge; the maker decides.
function waysToHold(work, plan) {
  if (!plan.advice.length) return nothing;
  const hold = a => html`<button type="button" @click=${() => work.edit(text => put(text, ["piece", "edges", a.words.edge, "hold"], a.hold))}>Hold the ${a.words.edge} edge by ${a.words.suggested}</button>`;
  return html`<section class="card" aria-labelledby="ways-head"><h2 id="ways-head">Ways to hold each edge</h2>
    <p class="hint">Each edge by itself, ${plan.adviceFor}, its corner pins left out. The suggestion is no more than that: you know your cloth and your tools. Which way is taken is said under Measure, at the edge.</p>
    ${table("Table of the ways to hold each edge", ["Edge", "By pins", "By combs", "By wires", "Planned", "Suggested", "Take it"], plan.advice.map(a => [a.words.edge, a.words.pins, a.words.combs, a.words.wires, a.words.planned, a.words.suggested, a.isPlanned ? "as planned" : hold(a)]))}
    ${plan.adviceStar ? html`<p class="hint">${plan.adviceStar}</p>` : nothing}
    <ul>${plan.advice.map(a => html`<li>${a.words.why}</li>`)}</ul></section>`;
}

function toggle(name, isOn, page) {
  if (isOn) off.delete(name);
  else off.add(name);
  localStorage.setItem("blocking-templates:layers-off", JSON.stringify([...off]));
  page.draw();
}

export function afterSee(work, root, page) {
  const holder = root.querySelector("#view");
  const plan = work.answer?.plan;
  if (!holder || !plan) return;
  const svg = show(holder.querySelector(".paper"), plan.view);
  switchLayers(svg, name => !off.has(name));
  if (page.viewport?.holder !== holder) page.viewport = new Viewport(holder);
  page.viewport.size = [plan.width, plan.height];
  page.viewport.apply();
}

