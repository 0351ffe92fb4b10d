// The projects: begin one of a kind of piece, from an example or from a file; go on with one; take one away.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { ask } from "/api.js";

let units = localStorage.getItem("blocking-templates:units") ?? (["US", "LR", "MM"].includes(new Intl.Locale(navigator.language).region) ? "in" : "cm");
let asked = null;

export function desk(page) {
  const copies = page.copies ?? [];
  return html`<h1 tabindex="-1">Projects</h1>
    ${copies.length ? html`<section class="card" aria-labelledby="go-on-head"><h2 id="go-on-head">Go on</h2>
      <ul class="copies">${copies.map(c => html`<li><a href="#/${c.id}/measure">${c.title || c.name}</a>${c.title && !c.filePath ? html` <span class="hint">${c.name}</span>` : nothing}${c.filePath ? html` <span class="hint">${c.filePath}${c.isSaved ? "" : ", not saved yet"}</span>` : nothing}
        ${asked === c.id ? html`<button type="button" class="warn" @click=${() => take(page, c)}>Take it away for good</button><button type="button" @click=${() => { asked = null; page.draw(); }}>Keep it</button>`
          : html`<button type="button" @click=${() => { asked = c.id; page.draw(); }}>Take away<span class="unseen"> ${c.title || c.name}, ${c.id}</span></button>`}</li>`)}</ul></section>` : nothing}
    <section class="card" aria-labelledby="begin-head"><h2 id="begin-head">Begin with a kind of piece</h2>
      <fieldset class="layers"><legend>Measured in</legend>${["cm", "in", "mm"].map(u => html`<label><input type="radio" name="units" value=${u} .checked=${u === units} @change=${() => { units = u; localStorage.setItem("blocking-templates:units", u); }}> ${u}</label>`)}</fieldset>
      <ul class="kinds">${page.start.kinds.map(k => html`<li><button type="button" data-kind=${k.shape} @click=${() => add(page, { shape: k.shape, units })}><img src="/api/kinds/${k.shape}" alt="" loading="lazy" width="120" height="120"><span>${k.shape}</span></button></li>`)}</ul></section>
    <section class="card" aria-labelledby="open-head"><h2 id="open-head">Open a project file</h2>
      <p class="hint">The command line's own files. Choose the files beside it too, if it names any.</p>
      <div class="field"><label for="open">Project file</label><input type="file" id="open" multiple accept=".jsonc,.json,.svg,.csv" @change=${e => open(page, e.target)}></div></section>
    <section class="card" aria-labelledby="examples-head"><h2 id="examples-head">Start from an example</h2>
      <ul class="examples">${page.start.examples.map(e => html`<li><button type="button" class="link" data-example=${e.name} @click=${() => add(page, { example: e.name })}>${e.title}</button></li>`)}</ul></section>`;
}

async function add(page, wish) {
  try {
    const copy = await ask("/api/copies", { method: "POST", json: wish });
    location.hash = `#/${copy.id}/measure`;
  } catch (e) {
    page.say(e.message);
  }
}

async function take(page, copy) {
  asked = null;
  try {
    page.copies = await ask(`/api/copies/${copy.id}`, { method: "DELETE" });
    localStorage.removeItem(`blocking-templates:${copy.id}`);
  } catch (e) {
    page.say(e.message);
  }
  page.draw();
}

async function open(page, input) {
  const files = [...input.files];
  input.value = "";
  const project = files.find(f => /\.jsonc?$/i.test(f.name));
  if (!project) {
    page.say("Choose a project file, which ends in .jsonc or .json.");
    return;
  }
  const beside = await Promise.all(files.filter(f => f !== project).map(async f => ({ name: f.name, bytes: base64(await f.arrayBuffer()) })));
  await add(page, { name: project.name, text: await project.text(), beside });
}

function base64(buffer) {
  const bytes = new Uint8Array(buffer);
  let words = "";
  for (let i = 0; i < bytes.length; i += 0x8000) words += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(words);
}
