// Everything else that the plan goes by, card by card.
import { html } from "/vendor/lit-html/lit-html.js";
import { bothWays, choice, field, isTyping, list, pair } from "/fields.js";
import { put, value } from "/project.js";
import { ask } from "/api.js";

export function settings(work, page, kind, unit) {
  const edges = kind?.byCorners ? (value(work.text, "piece.finished.edges") ?? []).map((e, i) => e?.name ?? `edge ${i + 1}`) : kind?.edges ?? [];
  const corners = kind?.byCorners ? (value(work.text, "piece.finished.corners") ?? []).map((c, i) => c?.name ?? `corner ${i + 1}`) : kind?.corners ?? [];
  return [cloth(work, page, unit), swatchAndStrips(work, unit), pins(work, corners, edges, unit), wiresAndCombs(work, unit), mats(work, unit), alongEdges(work, edges, unit),
    severalOf(work, kind, unit), forTheCover(work), besideCard(work, page)];
}

const card = (name, content) => html`<details class="card" name="settings"><summary><h2>${name}</h2></summary>${content}</details>`;
const capital = words => words.charAt(0).toUpperCase() + words.slice(1);

function cloth(work, page, unit) {
  return card("Cloth and setting", html`<div class="row">
    ${choice(work, "fabric.kind", "Kind of cloth")}
    ${field(work, { path: "fabric.fibre", label: "Fibre", isText: true, list: "fibres" })}<datalist id="fibres">${page.start.fibres.map(f => html`<option value=${f}></option>`)}</datalist>
    ${choice(work, "fabric.measured", "Measured")}
    ${bothWays(work, "fabric.wetChange", "Changes when wet", "-0.05: 5 % shorter wet than dry; used where the piece was measured dry")}
    ${bothWays(work, "fabric.springBack", "Springs back", "0.03: pinned 3 % longer than it stays")}
    ${field(work, { path: "fabric.grain", label: "Slant of the rows", unit: "°" })}
    ${pair(work, "fabric.stitch", ["Stitch, along the rows", "Stitch, across the rows"], { unit })}
    ${choice(work, "set.method", "Set by")}
    ${choice(work, "set.label", "Care label")}
    ${field(work, { path: "timeLimit", label: "Compute the cloth for at most", unit: "s", how: "then the best found so far is taken" })}
  </div>`);
}

function swatchAndStrips(work, unit) {
  const ways = words => [`${words}, along the rows`, `${words}, across the rows`];
  const strip = (name, words) => html`<fieldset class="row"><legend>${words}</legend>
    ${pair(work, `fabric.strips.${name}.length`, ["Between the marks without the weight", "With the weight"], { unit, group: "fabric.strips" })}
    ${field(work, { path: `fabric.strips.${name}.width`, label: "Width half-way with the weight", unit, group: "fabric.strips" })}</fieldset>`;
  return card("Swatch and pulled strips", html`
    <p class="hint">A swatch tells how the cloth stretches and springs back; strips with a small weight hung on them tell how stiff it is.</p>
    <fieldset class="row"><legend>Swatch</legend>
      ${pair(work, "fabric.swatch.before", ways("Before blocking"), { unit, group: "fabric.swatch" })}
      ${pair(work, "fabric.swatch.pinned", ways("While pinned"), { unit, group: "fabric.swatch" })}
      ${pair(work, "fabric.swatch.after", ways("Dry and unpinned"), { unit, group: "fabric.swatch" })}</fieldset>
    <fieldset class="row"><legend>Damp strips, all pulled by the same weight</legend>
      ${field(work, { path: "fabric.strips.width", label: "Width without the weight", unit, group: "fabric.strips" })}
      ${field(work, { path: "fabric.strips.weight", label: "Weight, clip and all", unit: "g", group: "fabric.strips" })}
      ${field(work, { path: "fabric.strips.reading", label: "A reading may be off by", unit, how: "1 mm unless said", group: "fabric.strips" })}</fieldset>
    ${strip("along", "Strip along the rows")}${strip("across", "Strip across the rows")}${strip("slanted", "Strip at 45 degrees")}`);
}

function pins(work, corners, edges, unit) {
  return card("Pins", html`<div class="row">
    ${field(work, { path: "pins.spacing", label: "Distance between pins", how: "the cloth decides unless said", unit })}
    ${field(work, { path: "pins.minSpacing", label: "Least distance", unit })}
    ${field(work, { path: "pins.maxSpacing", label: "Greatest distance", unit })}
    ${field(work, { path: "pins.scallop", label: "Edge may dip by", unit })}
    ${field(work, { path: "pins.anchor", label: "Pinned first", unsaid: "as it suits", choices: [...corners, ...edges, ...edges.map(e => `middle of ${e}`), "none"] })}
    ${field(work, { path: "pins.owned", label: "Pins at hand", isCount: true })}
  </div>`);
}

function wiresAndCombs(work, unit) {
  return card("Wires and combs", html`
    <p class="hint">Which edges they hold is said below, with the stitches and rows along the edges.</p>
    <fieldset class="row"><legend>Wires</legend>
      ${choice(work, "wires.kind", "Kind", "stiff")}
      ${field(work, { path: "wires.diameter", label: "Diameter", unit, how: "1.5 mm if stiff, 1 mm if flexible, unless said" })}
      ${field(work, { path: "wires.overlap", label: "Beside the next by", unit, how: "5 cm unless said" })}
      ${field(work, { path: "wires.every", label: "Through every so manieth stitch", isCount: true })}</fieldset>
    ${list(work, "wires.owned", { what: "wires at hand", legend: i => `Wires at hand, ${i + 1}`, blank: () => ({ length: null, count: 1 }), entry: at => html`
      ${field(work, { path: `${at}.length`, label: "Length", unit, isAsked: true })}
      ${field(work, { path: `${at}.count`, label: "How many", isCount: true })}
      ${choice(work, `${at}.kind`, "Kind", "as above")}
      ${field(work, { path: `${at}.diameter`, label: "Diameter", unit, how: "as above unless said" })}` })}
    <fieldset class="row"><legend>Combs</legend>
      ${field(work, { path: "combs.prongs", label: "Prongs", isCount: true, how: "8 unless said" })}
      ${field(work, { path: "combs.length", label: "First prong to last", unit, how: "9 cm unless said" })}
      ${field(work, { path: "combs.owned", label: "Combs at hand", isCount: true })}</fieldset>`);
}

function mats(work, unit) {
  const turns = JSON.stringify(value(work.text, "mats.turns") ?? [0, 90]);
  const ways = { "[0,90]": "0 and 90 degrees", "[0]": "0 degrees only", "[90]": "90 degrees only", "\"free\"": "every degree" };
  return card("Mats", html`<div class="row">
    ${pair(work, "mats.size", ["One more mat adds, across", "and up, if it is not square"], { unit, mayBeOne: true })}
    ${field(work, { path: "mats.border", label: "Border", how: "mat wanted outside the piece", unit })}
    ${field(work, { path: "mats.seamClearance", label: "Clear of seams", unit })}
    <div class="field"><label for="turns">Turned under the piece</label><select id="turns" .value=${turns} @change=${e => work.edit(text => put(text, "mats.turns", JSON.parse(e.target.value)))}>
      ${Object.entries(turns in ways ? ways : { ...ways, [turns]: turns }).map(([v, words]) => html`<option value=${v} ?selected=${v === turns}>${words}</option>`)}</select></div>
    ${field(work, { path: "mats.owned", label: "Mats at hand", isCount: true })}
    ${pair(work, "mats.floor", ["Floor, across", "Floor, up"], { unit })}
  </div>`);
}

function alongEdges(work, edges, unit) {
  return card("Stitches, rows and points along the edges", edges.map(e => {
    const [at, points] = [`piece.edges.${e}`, `piece.edges.${e}.points`];
    const isOpen = Boolean(value(work.text, points) || value(work.text, `${at}.stations`)) || isTyping([points, `${at}.stations`]);
    return html`<fieldset class="row"><legend>${capital(e)} edge</legend>
      ${field(work, { path: `${at}.count`, label: "Counted", isCount: true })}
      ${choice(work, `${at}.of`, "of", "stitches")}
      ${choice(work, `${at}.hold`, "Held by", "pins")}
      ${field(work, { path: `${at}.every`, label: "A mark every so many", isCount: true })}</fieldset>
    <details class="inner" ?open=${isOpen}><summary>Points, scallops and known stitches of the ${e} edge</summary>
      <div class="row">
        ${field(work, { path: `${points}.count`, label: "Points", isCount: true, group: points })}
        ${field(work, { path: `${points}.depth`, label: "Tips stand out by", unit, group: points })}
        ${field(work, { path: `${points}.unblockedDepth`, label: "Unblocked by", unit, group: points })}
        ${choice(work, `${points}.shape`, "Shape", "point", points)}
        ${choice(work, `${points}.valleys`, "Valleys", "free", points)}</div>
      ${list(work, `${at}.stations`, { what: `a known stitch or row of the ${e} edge`, legend: i => `Known place ${i + 1}, ${e} edge`, blank: () => ({ stitch: 1, at: null }), entry: station => html`
        ${field(work, { path: `${station}.stitch`, label: "Stitch or row", isCount: true, isAsked: true })}
        ${field(work, { path: `${station}.at`, label: "Lies unblocked at", unit })}
        ${field(work, { path: `${station}.finished`, label: "Shall lie finished at", unit, how: "evenly unless said" })}` })}
    </details>`;
  }));
}

// A pair of mirrored pieces, and sizes: what each has instead of the piece's own.
function severalOf(work, kind, unit) {
  const own = path => {
    const said = value(work.text, path);
    return said === undefined || said === null || typeof said === "object" ? undefined : `${said} as above`;
  };
  const sizes = kind && !kind.byCorners ? list(work, "sizes", {
    what: "a size", legend: (i, size) => `Size ${size.name || i + 1}`, blank: i => ({ name: `size ${i + 1}`, finished: {}, unblocked: {} }),
    entry: at => html`
      ${field(work, { path: `${at}.name`, label: "Called", isText: true })}
      ${kind.finished.filter(s => s.isAsked).map(s => field(work, { path: `${at}.finished.${s.name}`, label: `${capital(s.words)}, finished`, unit, blankSays: own(`piece.finished.${s.name}`) }))}
      ${(kind.bySides ? kind.edges.flatMap(e => [[`sides.${e}`, `${capital(e)} side, unblocked`], [`bows.${e}`, `Bow, ${e} edge, unblocked`]]) : kind.unblocked.filter(s => s.isAsked).map(s => [s.name, `${capital(s.words)}, unblocked`]))
        .map(([name, label]) => field(work, { path: `${at}.unblocked.${name}`, label, unit, blankSays: own(`piece.unblocked.${name}`) }))}` })
    : html`<p class="hint">Sizes of a piece drawn corner by corner are written in the project's text.</p>`;
  return card("A pair, or several sizes", html`
    <fieldset class="row"><legend>A mirrored pair</legend>${pair(work, "piece.pair", ["As measured, such as left front", "Its mirror image, such as right front"], { isText: true })}</fieldset>
    ${sizes}`);
}

function forTheCover(work) {
  return card("Notes for the cover", field(work, { path: "notes", label: "Printed on the cover", isText: true, keepsText: true, isLong: true }));
}

function besideCard(work, page) {
  return card("Files beside the project", html`
    <p class="hint">A drawn outline may stand in an SVG or CSV file; the project names it in <code>"file"</code>.</p>
    <div class="field"><label for="beside">Add a file</label><input type="file" id="beside" accept=".svg,.csv" @change=${e => addBeside(work, page, e.target)}></div>`);
}

async function addBeside(work, page, input) {
  const [file] = input.files;
  if (!file) return;
  try {
    await work.settled();
    await ask(`/api/copies/${work.id}/beside/${encodeURIComponent(file.name)}`, { method: "PUT", body: await file.arrayBuffer(), type: "application/octet-stream" });
    page.say(`${file.name} stands beside the project.`);
  } catch (e) {
    page.say(e.message);
  }
  input.value = "";
}
