// The page: four parts over one project, and the projects themselves.
import { html, nothing, render } from "/vendor/lit-html/lit-html.js";
import { ask } from "/api.js";
import { fill } from "/fields.js";
import { learn } from "/schema.js";
import { Work } from "/work.js";
import { desk } from "/parts/desk.js";
import { afterMeasure, measure } from "/parts/measure.js";
import { afterSee, see } from "/parts/see.js";
import { print } from "/parts/print.js";
import { afterPin, pin, Pinning } from "/parts/pin.js";
import { lookAnew } from "/parts/stage.js";
import { shareCard, toggleShare } from "/parts/share.js";

const parts = { measure: "Measure", see: "See", print: "Print", pin: "Pin" };
const bodies = { measure, see, print, pin };
const after = { measure: afterMeasure, see: afterSee, print: () => {}, pin: afterPin };
const root = document.getElementById("page");

const page = {
  start: null, copies: null, work: null, part: null, said: "", viewport: null, pinning: null, isDrawn: false,
  draw() {
    if (page.isDrawn) return;
    page.isDrawn = true;
    queueMicrotask(() => { page.isDrawn = false; drawNow(); });
  },
  say(words) {
    page.said = words;
    page.draw();
  },
};

function drawNow() {
  const { work, part } = page;
  const link = name => html`<a href="#/${work.id}/${name}" aria-current=${name === part ? "page" : nothing}>${parts[name]}</a>`;
  render(html`
    <a class="skip" href="#main" @click=${e => { e.preventDefault(); focusHead(); }}>To the content</a>
    <header>
      <a class="home" href="#/" aria-current=${work ? nothing : "page"}>Projects</a>
      ${work ? html`<nav aria-label="Parts of the project">${Object.keys(parts).map(link)}</nav>` : nothing}
      ${page.start?.isShared && page.start.isLocal ? html`<button type="button" class="quiet" @click=${() => toggleShare(page)}>Other screens</button>` : nothing}
    </header>
    <main id="main">
      ${shareCard(page)}
      <p class="said" role="status" ?hidden=${!page.said}>${page.said} ${page.said ? html`<button type="button" class="link" @click=${() => page.say("")}>Close</button>` : nothing}</p>
      ${work ? html`${state(work)}<div class="part part-${part}">${bodies[part](work, page)}</div>` : page.copies ? desk(page) : html`<p>One moment…</p>`}
    </main>`, root);
  if (work) {
    fill(root, work.text);
    after[part](work, root, page);
  }
}

function state(work) {
  const copy = page.copy;
  return html`<div class="state">
    <span role="status" id="sent">${!work.isOnline ? "The program does not answer. What you type is kept in this browser and sent as soon as it does." : work.trouble || (work.isSent ? "Kept" : "Keeping…")}</span>
    ${copy?.filePath ? html`<button type="button" id="save" @click=${save}>Save to ${copy.filePath.split(/[\\/]/).pop()}</button>` : nothing}
    <a class="button" href="/api/copies/${work.id}/text" download>Save as a file</a>
    ${work.unsent !== null ? html`<div class="card warn"><p>This browser holds text of this project that was typed while the program did not answer, and the project was changed elsewhere since.</p>
      <p><button type="button" @click=${() => work.useUnsent(true)}>Use the text typed here</button> <button type="button" @click=${() => work.useUnsent(false)}>Drop it</button></p></div>` : nothing}
  </div>`;
}

async function save() {
  try {
    await page.work.settled();
    page.copy = await ask(`/api/copies/${page.work.id}/save`, { method: "POST", json: {} });
    page.say(`Saved to ${page.copy.filePath}.`);
  } catch (e) {
    page.say(e.message);
  }
}

function focusHead() {
  root.querySelector("main h1")?.focus();
}

async function go() {
  const [, id, part] = location.hash.split("/");
  page.said = "";
  page.part = parts[part] ? part : "measure";
  if (!id) {
    page.work?.end();
    page.work = null;
    page.copies = await ask("/api/copies");
  } else if (page.work?.id !== id) {
    page.work?.end();
    const work = new Work(id, () => { if (page.work === work) page.draw(); });
    page.work = null;
    page.pinning = new Pinning(work, page);
    try {
      page.copy = await ask(`/api/copies/${id}`);
      page.work = work;
      await work.begin();
    } catch (e) {
      work.end();
      page.work = null;
      page.copies = await ask("/api/copies").catch(() => []);
      page.said = e.message;
    }
  }
  if (page.work && page.part === "pin") page.pinning.isAsked = page.pinning.plan !== null && !page.pinning.changedSince;
  document.title = `${page.work ? `${parts[page.part]}: ${page.copy.title || page.copy.name}` : "Projects"}: Blocking Templates`;
  drawNow();
  focusHead();
}

addEventListener("hashchange", () => go().catch(e => page.say(e.message)));
const drawAnew = () => { lookAnew(); page.draw(); };
addEventListener("resize", drawAnew);
document.addEventListener("focusout", e => { if (e.target.closest?.(".room")) setTimeout(drawAnew, 150); });
document.fonts?.addEventListener("loadingdone", drawAnew);
document.addEventListener("toggle", () => page.draw(), true);
document.addEventListener("keydown", e => { if (page.part === "pin" && page.work) page.pinning.key(e); });

try {
  const [start, schema] = await Promise.all([ask("/api/start"), ask("/api/schema")]);
  page.start = start;
  learn(schema);
  await go();
} catch (e) {
  page.said = e.message === "Failed to fetch" ? "The program does not answer. Is it still running?" : e.message;
  page.copies = null;
  drawNow();
}
