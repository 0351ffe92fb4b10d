// Pin: for the screen beside the mats. The next mark large, set one after the other; then every pin counted back.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { ask } from "/api.js";
import { show, switchLayers } from "/pictures.js";
import { whichPlan } from "/parts/see.js";

const hidden = new Set(["arrows", "sheets", "stretch", "numbers", "predicted edge"]);

export class Pinning {
  constructor(work, page) {
    Object.assign(this, { work, page, plan: null, changedSince: false, isAsked: false, jump: "" });
  }

  get pins() {
    return this.work.pins;
  }

  async fetch() {
    this.isAsked = true;
    this.learn(await ask(`/api/copies/${this.work.id}/pins`));
  }

  learn(answer) {
    if (answer.pins && (!this.pins || answer.pins.change >= this.pins.change)) this.work.pins = answer.pins;
    this.changedSince = answer.changedSince;
    if (answer.plan) [this.plan, this.count] = [{ ...answer.plan, marks: answer.marks }, (this.count ?? 0) + 1];
    this.page.draw();
  }

  async step(step, number = 0) {
    try {
      this.learn(await ask(`/api/copies/${this.work.id}/pins`, { method: "POST", json: { step, number } }));
    } catch (e) {
      this.page.say(e.message === "Failed to fetch" ? "The program does not answer; this step was not kept." : e.message);
    }
  }

  // The plan that is pinned by is the whole one, so it waits for the cloth.
  async begin() {
    this.isBeginning = true;
    this.page.draw();
    await this.work.settled();
    await this.step("begin", this.work.part);
    this.isBeginning = false;
    this.page.draw();
  }

  key(e) {
    if (!this.pins || !this.plan || e.ctrlKey || e.altKey || e.metaKey || e.target.closest("input, textarea, select")) return;
    const isButton = e.target.closest("button, a, summary");
    const does = { ArrowRight: () => this.next(), ArrowLeft: () => this.back(), Backspace: () => this.back(), ...(isButton ? {} : { " ": () => this.next(), Enter: () => this.next() }) }[e.key];
    if (!does) return;
    e.preventDefault();
    does();
  }

  next() {
    const { takingOut, at, set } = this.pins;
    if (takingOut) {
      const [first] = this.stillIn();
      if (first) this.step("out", first);
    } else if (set.length < this.pins.marks || !set.includes(at)) {
      this.step("set", at);
    }
  }

  back() {
    const { takingOut, at, set, out, marks } = this.pins;
    if (takingOut) {
      if (out.length) this.step("in", out[out.length - 1]);
    } else {
      const before = at > 1 ? at - 1 : set.length === marks ? marks : null;
      if (set.length === marks && set.includes(at)) this.step("unset", at);
      else if (before) this.step("unset", before);
    }
  }

  // What has to come out again: the pins that were set, then the wires.
  get toTake() {
    const { set, marks, wires } = this.pins;
    return [...set, ...Array.from({ length: set.length ? wires : 0 }, (_, i) => marks + 1 + i)];
  }

  stillIn() {
    return this.toTake.filter(n => !this.pins.out.includes(n));
  }

  // What stands at a mark, or a wire: its kind, its name and where it is.
  thing(n) {
    const mark = this.plan.marks[n - 1];
    if (mark) return { kind: mark.kind === "comb" ? "comb" : "pin", name: `${mark.kind === "comb" ? "Comb" : "Pin"} ${n}`, number: n, where: `${mark.where}, mat ${mark.mat}` };
    const wire = this.plan.wires[n - this.pins.marks - 1];
    return { kind: "wire", name: `Wire ${wire.number}`, number: wire.number, where: `${wire.edge} edge, ${wire.length} long, ${wire.from} to ${wire.to}` };
  }

  // Such as "3 of 24 pins, 1 of 6 combs".
  tally(all, done) {
    return ["pin", "comb", "wire"].map(kind => {
      const of = all.filter(n => this.thing(n).kind === kind);
      return of.length ? `${of.filter(n => done.includes(n)).length} of ${of.length} ${kind}s` : "";
    }).filter(Boolean).join(", ");
  }
}

export function pin(work, page) {
  const p = page.pinning;
  if (!p.isAsked) p.fetch().catch(e => page.say(e.message));
  const begins = again => html`<button type="button" class="main" ?disabled=${!work.answer?.plan || p.isBeginning} @click=${() => p.begin()}>${again ? "Begin anew by the plan as it is now" : "Begin pinning"}</button>
    ${p.isBeginning && !work.answer?.isFinal ? html`<span role="status">The cloth is being computed first…</span>` : nothing}`;
  if (!p.pins || !p.plan) {
    return html`<h1 tabindex="-1">Pin</h1>
      ${p.pins ? html`<p>One moment…</p>` : html`<section class="card"><p>Mark after mark in the plan's order, on this screen or on several: all show the same.</p>
        <p class="hint">Use only rustproof pins. Pins stand up from the floor: keep children, animals and bare feet away until the last one is out.</p>
        ${work.answer?.plan ? html`<p>${work.answer.plan.supplies.map(s => `${s.layOut} ${s.name}`).join("; ")}; ${work.answer.plan.mats} mats.</p>` : html`<p class="hint">There is no plan to pin by until the problems are mended.</p>`}
        ${whichPlan(work)}
        <p>${begins(false)}</p></section>`}`;
  }
  return html`<h1 tabindex="-1">Pin</h1>
    ${p.changedSince ? html`<section class="card warn"><p>The project was changed after this pinning began. You go on by the plan as it was then.</p>${whichPlan(work)}<p>${begins(true)}</p></section>` : nothing}
    ${p.pins.takingOut ? takingOut(p) : setting(p)}`;
}

function setting(p) {
  const { at, set, marks } = p.pins;
  const mark = p.plan.marks[at - 1];
  const thing = p.thing(at);
  const isDone = set.length === marks;
  return html`
    <section class="now" aria-labelledby="now-head">
      <div class="now-words">
        <p class="so-far" role="status">${p.tally(p.plan.marks.map(m => m.number), set)} set</p>
        <h2 id="now-head"><span class="unseen">Mark </span><span class="number">${mark.number}</span></h2>
        <p class="where">${mark.where}</p>
        ${pullWords(mark.inTurn ?? mark.pull)}
        <p>On mat <b>${mark.mat}</b>: <b>${mark.fromLeft}</b> from its left side, <b>${mark.fromLower}</b> from its lower side</p>
        ${mark.kind === "comb" ? html`<p>A comb: its middle goes here, its bar along the drawn one</p>` : mark.kind === "wire" ? html`<p>Holds the wire: set it on the wire's inner side</p>` : nothing}
        <p class="hint">Round ${mark.round}, marked by a ${mark.form}</p>
      </div>
      <figure class="now-mat"><div class="paper" data-picture="mat" data-number=${at}></div><figcaption>Mat ${mark.mat}, seen from its lower side</figcaption></figure>
      <div class="pin-buttons">
        <button type="button" class="main huge" id="set" ?disabled=${isDone && set.includes(at)} @click=${() => p.next()}>${set.includes(at) ? "Set already: next" : `${thing.name} is set`}</button>
        <button type="button" class="huge" id="back" @click=${() => p.back()}>Back</button>
      </div>
      ${isDone ? html`<div class="card done"><p><b>All ${marks} ${p.plan.marks.some(m => m.kind === "comb") ? "pins and combs" : "pins"} are set.</b> Leave the piece until no spot feels cool or damp, thickest parts and corners included.</p>
        <p><button type="button" class="main huge" id="dry" @click=${() => p.step("dry")}>It is dry: count the pins out</button></p></div>` : nothing}
      ${set.length === 0 && p.plan.wires.length ? html`<div class="card done"><p><b>The wires first.</b> Run each through its edge before the piece is laid down; their ends are sharp: mind eyes and hands.</p>
        <ul>${p.plan.wires.map(w => html`<li>Wire ${w.number}: ${w.edge} edge, ${w.length} long, ${w.from} to ${w.to}${w.through ? `, through ${w.through}` : ""}</li>`)}</ul></div>` : nothing}
    </section>
    <div class="pin-pictures">
      <figure><div class="whole-piece"><div class="paper" data-picture="whole"></div>${dots(p)}</div><figcaption>The whole piece: filled, set; ringed, next</figcaption></figure>
    </div>
    <form class="row" @submit=${e => { e.preventDefault(); p.step("go", Number(e.target.elements.jump.value)); }}>
      <div class="field"><label for="jump">Go to mark</label><input id="jump" name="jump" type="number" min="1" max=${marks} required inputmode="numeric"></div><button type="submit">Go</button>
    </form>
    <p class="hint">Space bar or right arrow: set. Left arrow: back.</p>
    ${isDone ? nothing : html`<details><summary>Done before the last mark?</summary><p><button type="button" @click=${() => p.step("dry")}>${set.length === 1 ? "Count the one pin out" : `Count the ${set.length} set so far out`}</button></p></details>`}`;
}

// The pull in turn: from where the edge lies once all earlier pins are set.
function pullWords(pull) {
  if (!pull) return html`<p class="pull">to its mark</p>`;
  if (!pull.direction) return html`<p class="pull">it lies there already: pull <b>${pull.length}</b></p>`;
  return html`<p class="pull"><svg class="way" viewBox="-12 -12 24 24" aria-hidden="true">${svg`<g transform="rotate(${-pull.angle})"><path d="M-10 0H6M2 -5L9 0L2 5" /></g>`}</svg><span>pull ${pull.isApproximate ? "about " : ""}<b>${pull.length}</b> ${pull.direction}</span></p>`;
}

function dots(p) {
  const { at, set, out, takingOut: isOut } = p.pins;
  const now = p.plan.marks[at - 1];
  const r = Math.max(p.plan.width, p.plan.height) / 110;
  const isIn = n => set.includes(n) && !(isOut && out.includes(n));
  return html`<svg class="over whole" viewBox="0 0 ${p.plan.width} ${p.plan.height}" aria-hidden="true">
    ${p.plan.marks.filter(m => isIn(m.number)).map(m => svg`<circle class="set" cx=${m.x} cy=${m.y} r=${r}></circle>`)}
    ${isOut ? nothing : svg`<circle class="next" cx=${now.x} cy=${now.y} r=${2.4 * r}></circle>`}</svg>`;
}

function takingOut(p) {
  const { out } = p.pins;
  const all = p.toTake;
  const still = p.stillIn();
  const next = still.length ? p.thing(still[0]) : null;
  const ticks = kind => all.filter(n => p.thing(n).kind === kind);
  const kinds = ["pin", "comb", "wire"].filter(kind => ticks(kind).length);
  return html`
    <section class="now" aria-labelledby="now-head">
      <div class="now-words">
        <p class="so-far" role="status">${p.tally(all, out)} out</p>
        <h2 id="now-head">${next ? html`<span class="unseen">Next out: </span>${next.kind === "pin" ? nothing : html`<span>${next.kind} </span>`}<span class="number">${next.number}</span>`
          : html`All ${kinds.map(kind => `${ticks(kind).length} ${kind}s`).join(", ")} are out`}</h2>
        ${next ? html`<p class="where">${next.where}</p>`
          : html`<p>Go over mats and cloth with your hand and a magnet all the same: a pin left behind hurts someone.</p>`}
      </div>
      <div class="pin-buttons">
        ${next ? html`<button type="button" class="main huge" id="out" @click=${() => p.next()}>${next.name} is out</button>` : nothing}
        <button type="button" class="huge" ?disabled=${out.length === 0} @click=${() => p.back()}>Back</button>
      </div>
    </section>
    ${kinds.map(kind => html`<section class="card" aria-labelledby="ticks-${kind}"><h2 id="ticks-${kind}">Every ${kind}</h2>
      <p class="hint">In any order: press a number when its ${kind} is out.</p>
      <ul class="pin-ticks">${ticks(kind).map(n => html`<li><button type="button" aria-label="${p.thing(n).name}" aria-pressed=${out.includes(n) ? "true" : "false"} @click=${() => p.step(out.includes(n) ? "in" : "out", n)}>${p.thing(n).number}</button></li>`)}</ul></section>`)}
    <div class="pin-pictures"><figure><div class="whole-piece"><div class="paper" data-picture="whole"></div>${dots(p)}</div><figcaption>Filled: still in</figcaption></figure></div>
    <p><button type="button" @click=${() => p.step("pin")}>Back to pinning</button></p>`;
}

let asked = "";

export function afterPin(work, root, page) {
  const p = page.pinning;
  if (!p?.plan) return;
  const whole = root.querySelector("[data-picture=whole]");
  if (whole) switchLayers(show(whole, p.plan.view), name => !hidden.has(name));
  const mat = root.querySelector("[data-picture=mat]");
  const number = mat?.dataset.number;
  const key = `${work.id} ${p.count} ${number}`;
  if (!mat || mat.shownKey === key || asked === key) return;
  asked = key;
  ask(`/api/copies/${work.id}/pins/${number}/mat`, { raw: true }).then(a => a.text()).then(text => {
    if (mat.dataset.number !== number) return;
    show(mat, text);
    mat.shownKey = key;
  }).catch(() => {}).finally(() => { asked = ""; });
}
