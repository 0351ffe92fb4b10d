// Measure: the kind of piece, its finished size, what the tape said, and what else the plan needs to know.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { choice, field, isTyping, notes, problems, shown, yesNo } from "/fields.js";
import { lineOffset, put, value, without, withNumbersAs } from "/project.js";
import { isLength } from "/schema.js";
import { show, switchLayers } from "/pictures.js";
import { drawing, layOut, lettered } from "/parts/stage.js";
import { settings } from "/parts/settings.js";
import { clothWords, counts, whichPlan } from "/parts/see.js";

export function measure(work, page) {
  const shape = value(work.text, "piece.shape");
  const kind = page.start.kinds.find(k => k.shape === shape);
  const unit = value(work.text, "units") ?? "mm";
  return html`
    <h1 tabindex="-1">Measure</h1>
    <div class="measure"><div class="measure-fields">
    ${problems(work)}
    <section class="card">
      <div class="row">
        ${field(work, { path: "title", label: "Title", isText: true, keepsText: true, isWide: true })}
        <div class="field"><label for="units">Units</label><select id="units" .value=${unit} @change=${e => changeUnits(work, unit, e.target.value)}>
          ${page.start.units.map(u => html`<option value=${u.name} ?selected=${u.name === unit}>${u.name}</option>`)}</select></div>
        ${choice(work, "piece.faceUp", "Side up while it dries", "right side")}
        ${choice(work, "piece.measuredFaceUp", "Side up when measured", "the same")}
      </div>
      ${yesNo(work, "piece.evenOut", "Even out left and right", "Real tapes differ a little; this takes the mean of both.")}
    </section>
    ${kind ? html`
      <section class="card stage" aria-labelledby="finished-head">
        <h2 id="finished-head">Finished size of the ${kind.shape}</h2>
        <p class="hint">The size it should have once it has dried. Write ${unit === "in" ? html`<code>58 1/4</code>` : html`<code>148</code>`}, or with a unit of its own: <code>1.48 m</code>.</p>
        ${room(work, "finished", kind, unit)}
      </section>
      <section class="card stage" aria-labelledby="unblocked-head">
        <h2 id="unblocked-head">As it lies now, unblocked</h2>
        ${value(work.text, "piece.unblocked") ? html`
          <p class="hint">Lay it flat, pat it, do not pull. Bow: how far the middle of an edge lies out from the straight line; minus: inward. Filled circles can be dragged, or moved with the arrow keys.
            <a href="/api/copies/${work.id}/form" target="_blank" rel="noopener">Measuring form (PDF)</a></p>
          ${room(work, "unblocked", kind, unit)}
          <p><button type="button" @click=${() => work.edit(text => without(text, "piece.unblocked"))}>Leave out the unblocked size</button></p>` : html`
          <p class="hint">Without it the plan has no lay line and no pulls.</p>
          <p><button type="button" class="main" @click=${() => work.edit(text => put(text, "piece.unblocked", blank(kind, text)))}>Measure it</button></p>`}
      </section>` : html`<section class="card"><h2>Kind of piece</h2>${field(work, { path: "piece.shape", label: "Kind", choices: page.start.kinds.map(k => k.shape) })}</section>`}
    ${settings(work, page, kind, unit)}
    ${textCard(work)}</div>
    <aside class="measure-beside" aria-label="The plan so far">
      ${work.answer?.plan ? html`<section class="card" aria-labelledby="counts-head"><h2 id="counts-head">What it takes</h2>${whichPlan(work)}
        <a class="small-view" href="#/${work.id}/see"><div class="paper" data-picture="small"></div><span class="unseen">See the drawing large</span></a>${counts(work.answer.plan)}${clothWords(work)}</section>` : nothing}
      ${notes(work)}
    </aside></div>`;
}

const capital = words => words.charAt(0).toUpperCase() + words.slice(1);

function fieldsOf(which, kind, unit, text) {
  const path = `piece.${which}`;
  const sizes = which === "finished" ? kind.finished : kind.unblocked;
  const named = sizes.map(s => ({ path: `${path}.${s.name}`, label: capital(s.words), how: s.insteadOf ? `instead of ${s.insteadOf}: ${s.how}` : s.how, unit, isMore: !s.isAsked,
    isAsked: s.isAsked && !sizes.some(o => o.insteadOf === s.name), replaces: s.insteadOf ? `${path}.${s.insteadOf}` : null }));
  const bow = edge => ({ path: `${path}.bows.${edge}`, label: `Bow, ${edge} edge`, unit, isMore: which === "finished" });
  if (kind.byCorners) return corners(path, unit, text);
  if (which === "finished") return [...named, ...kind.bowedEdges.map(bow)];
  if (!kind.bySides) return [...named, ...kind.bowedEdges.map(bow)];
  const [from, to] = [i => kind.corners[i], i => kind.corners[(i + 1) % kind.corners.length]];
  return [
    ...kind.edges.flatMap((e, i) => [{ path: `${path}.sides.${e}`, label: `${capital(e)} side`, how: `straight, ${from(i)} to ${to(i)}`, unit, isAsked: true }, bow(e)]),
    ...(kind.takesDiagonal ? [{ path: `${path}.diagonal.length`, label: "Diagonal", how: `straight, ${value(text, `${path}.diagonal.from`) ?? from(0)} to ${value(text, `${path}.diagonal.to`) ?? from(2)}`, unit, problemsOf: `${path}.diagonal`, whole: [`${path}.diagonal`, { from: from(0), to: from(2), length: null }], leave: "Leave it out" }] : []),
    ...kind.edges.map(e => ({ path: `${path}.along.${e}`, label: `Along the ${e} edge`, how: "instead of a side or a bow: tape laid along the edge", unit, isMore: true })),
  ];
}

// Corner by corner and edge by edge, as the file has them.
function corners(path, unit, text) {
  const [ring, edges] = [value(text, `${path}.corners`) ?? [], value(text, `${path}.edges`) ?? []];
  if (value(text, `${path}.file`)) return [{ path: `${path}.file`, label: "File with the line at true size", isText: true }];
  return ring.flatMap((corner, i) => {
    const at = Array.isArray(corner) ? `${path}.corners[${i}]` : `${path}.corners[${i}].at`;
    const name = corner?.name ?? `corner ${i + 1}`;
    const edge = edges[i] ?? {};
    return [
      { path: `${at}[0]`, label: `${capital(name)}: to the right`, unit, letterOf: `${path}.corners[${i}]` },
      { path: `${at}[1]`, label: `${capital(name)}: up`, unit },
      ...(edge.offsets || edge.points ? [] : [{ path: `${path}.edges[${i}].bow`, label: `Bow, ${edge.name ?? `edge ${i + 1}`}`, unit }]),
    ];
  });
}

function room(work, which, kind, unit) {
  const all = fieldsOf(which, kind, unit, work.text);
  const byLetter = lettered(work.answer?.[which]);
  const names = new Map(all.map(f => [f.path, f.label]));
  const withLetter = f => field(work, { ...f, letter: byLetter.get(f.letterOf ?? f.path), place: kind.byCorners ? null : f.path });
  const more = all.filter(f => f.isMore);
  const isOpen = more.some(f => shown(work.text, f.path) !== "") || isTyping(more.map(f => f.path));
  return html`<div class="room" data-room=${which}>${drawing(work, which, names)}<div class="fields">${all.filter(f => !f.isMore).map(withLetter)}</div></div>
    ${more.length ? html`<details ?open=${isOpen}><summary>More measurements</summary><div class="row">${more.map(f => field(work, f))}</div></details>` : nothing}`;
}

function blank(kind, text) {
  if (kind.byCorners) return structuredClone(value(text, "piece.finished"));
  if (!kind.bySides) return Object.fromEntries(kind.unblocked.filter(s => s.isAsked).map(s => [s.name, null]));
  return { sides: Object.fromEntries(kind.edges.map(e => [e, null])), bows: {}, along: {} };
}

function changeUnits(work, from, to) {
  if (from === to) return;
  work.edit(text => put(withNumbersAs(text, isLength, said => `${said} ${from}`), "units", to));
}

function textCard(work) {
  return html`<details class="card" id="text-card"><summary><h2>The project's text</h2></summary>
    <div class="field"><label for="text">The file as it is saved</label>
    <textarea id="text" rows="18" spellcheck="false" aria-describedby="text-how" @input=${e => { const text = e.target.value; work.edit(() => text); }}></textarea>
    <span class="how" id="text-how">Everything above changes this text, and this text changes everything above. Comments are kept.</span></div></details>`;
}

// After the page is drawn: pictures, places of the fields, the text.
export function afterMeasure(work, root) {
  for (const which of ["finished", "unblocked"]) {
    const picture = work.answer?.[which];
    const holder = root.querySelector(`[data-picture=${which}]`);
    if (holder && picture) show(holder, picture.svg);
    const place = root.querySelector(`[data-room=${which}]`);
    if (place && picture) layOut(place, picture, work.answer);
  }
  const small = root.querySelector("[data-picture=small]");
  if (small && work.answer?.plan) switchLayers(show(small, work.answer.plan.view), name => !["sheets", "stretch", "numbers", "predicted edge"].includes(name));
  const text = root.querySelector("#text");
  if (text && text !== document.activeElement && text.value !== work.text) text.value = work.text;
}

document.addEventListener("to-line", e => {
  const card = document.getElementById("text-card");
  if (!card) return;
  card.open = true;
  const text = document.getElementById("text");
  const from = lineOffset(text.value, e.detail);
  text.focus();
  text.setSelectionRange(from, Math.max(from, (text.value.indexOf("\n", from) + 1 || text.value.length) - 1));
});
