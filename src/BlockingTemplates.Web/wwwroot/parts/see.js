// See: the plan on its mats, part by part, and what it takes.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { notes, problems } from "/fields.js";
import { show, switchLayers, Viewport } from "/pictures.js";

const off = new Set(JSON.parse(localStorage.getItem("blocking-templates:layers-off") ?? "null") ?? ["sheets", "stretch", "predicted edge"]);
const words = { "outline and marks": "outline and marks", arrows: "pulls" };

export function counts(plan) {
  const line = (name, said) => html`<div><dt>${name}</dt><dd>${said}</dd></div>`;
  return html`<dl class="counts">
    ${line("Mats", html`<b>${plan.mats}</b> ${plan.matField}`)}
    ${line("Pins", html`<b>${plan.pins}</b>`)}
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
        <section class="card" aria-labelledby="edges-head"><h2 id="edges-head">Edges</h2><div class="table" tabindex="0" role="region" aria-label="Table of the edges"><table><thead><tr><th scope="col">Edge</th><th scope="col">Finished</th><th scope="col">Unblocked</th><th scope="col">Stretch</th><th scope="col">Pins</th></tr></thead>
          <tbody>${plan.edges.map(e => html`<tr><th scope="row">${e.name}</th><td>${e.finished}</td><td>${e.unblocked ?? "–"}</td><td>${e.stretch ?? "–"}</td><td>${e.pins}</td></tr>`)}</tbody></table></div></section>
        ${notes(work)}
      </div>
    </div>`;
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

