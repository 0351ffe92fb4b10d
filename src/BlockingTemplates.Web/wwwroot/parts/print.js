// Print: paper, the printer check, the way of use, and the files: the command line's own.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { choice, field, pair, problems, yesNo } from "/fields.js";
import { put, value, without } from "/project.js";
import { clothWords } from "/parts/see.js";

const usual = ["A4", "A3", "Letter", "Legal", "Tabloid"];
const left = new Set();

const about = {
  "overview.svg": "the piece on its mats, to scale",
  "overview.png": "the same as a picture",
  "mats.pdf": "the mat chart, for those who print no guide",
  "plot.pdf": "the whole guide on one page, for a print shop or a projector",
  "pins.csv": "the pin table for a spreadsheet",
  "plan.json": "the whole plan as data",
  "sizes.csv": "the sizes side by side, for a spreadsheet",
  "sizes.pdf": "the sizes side by side",
};

// The guide first: it is what one comes for.
const inOrder = plan => [...plan.files.filter(isGuide), ...plan.files.filter(n => !isGuide(n)), "project"];
const isGuide = name => last(name).startsWith("guide-");
const last = name => name.split("/").pop();
const wordsOf = name => about[last(name)] ?? (isGuide(name) ? "the full-size guide to print and tape" : "");

export function print(work, page) {
  const plan = work.answer?.plan;
  const unit = value(work.text, "units") ?? "mm";
  const said = value(work.text, "sheets.paper");
  const papers = said === undefined || said === null ? ["A4"] : [said].flat();
  const isOn = name => papers.some(p => typeof p === "string" && p.toLowerCase() === name.toLowerCase());
  const box = name => html`<label class="tick"><input type="checkbox" .checked=${isOn(name)} @change=${e => setPaper(work, papers, name, e.target.checked)}> ${name}</label>`;
  const all = page.start.papers;
  const bars = plan?.guides[0];
  return html`<h1 tabindex="-1">Print</h1>
    ${work.answer?.problems.length ? problems(work) : nothing}
    <section class="card"><h2>Paper</h2>
      <fieldset><legend>One guide for each paper ticked</legend><div class="ticks">${all.filter(n => usual.includes(n) || isOn(n)).map(box)}</div>
      <details><summary>More sizes and rolls</summary><div class="ticks">${all.filter(n => !usual.includes(n) && !isOn(n)).map(box)}</div></details></fieldset>
      <div class="row">${choice(work, "sheets.use", "Way of use", "prick")}
        ${field(work, { path: "sheets.margin", label: "Margin", unit, how: "12 mm unless said" })}
        ${field(work, { path: "sheets.overlap", label: "Overlap", unit, how: "15 mm unless said" })}</div>
      <p class="hint">Prick: marks go through dry paper into the mats, then the paper is taken away. Film: the dry paper stays under clear film. Frame: the inside is cut away and the cloth never touches the paper.</p>
      ${yesNo(work, "sheets.half", "Half a guide", "Only one half of a symmetric piece is printed, and turned over for the other.")}
      ${yesNo(work, "sheets.all", "Empty sheets too", "Every sheet of the page grid, those inside the piece too.")}
    </section>
    <section class="card"><h2>Printer check</h2>
      <ol class="hint"><li>Print the guide's first page alone, at “actual size” or 100 %.</li><li>Measure its two bars: ${bars ? `${bars.shortBarMm} mm and ${bars.longBarMm} mm` : "150 mm and 240 mm"} if the printer is true.</li><li>If they are a little off, write here what they measure; the guide makes up for it. <code>149.5 mm</code> reads in any unit.</li></ol>
      ${pair(work, "sheets.measured", ["Bar along the short side", "Bar along the long side"], { unit })}
    </section>
    <section class="card"><h2>Files</h2>
      ${clothWords(work)}
      ${plan ? html`
        <p class="hint">${plan.guides.map(g => `${g.paper}: ${g.sheets + g.joining} sheets`).join("; ")}, with cover, taping map, pin table and edge strips before them. Print at actual size from a PDF viewer; this page itself is not a guide.</p>
        <fieldset><legend>The packet holds</legend><ul class="files">${inOrder(plan).map(name => html`<li>
          <label class="tick"><input type="checkbox" .checked=${!left.has(name)} @change=${e => { if (e.target.checked) left.delete(name); else left.add(name); page.draw(); }}> ${name === "project" ? html`<b>project file</b> to work on later` : html`<b>${name}</b> ${wordsOf(name)}`}</label>
          ${name === "project" ? html`<a href="/api/copies/${work.id}/text" download>Download</a>` : html`<a href=${fileAddress(work, name)} download=${last(name)}>Download<span class="unseen"> ${name}</span></a>`}</li>`)}</ul></fieldset>
        <p><a class="main button" id="packet" href=${packetAddress(work, plan)} download>Download the packet (zip)</a></p>`
      : html`<p class="hint">There is nothing to print until the problems are mended.</p>`}
    </section>
    ${plan ? html`<section class="card"><h2>Cautions</h2><ul>${plan.cautions.map(c => html`<li>${c}</li>`)}</ul></section>` : nothing}`;
}

const fileAddress = (work, name) => `/api/copies/${work.id}/files/${name.split("/").map(encodeURIComponent).join("/")}?version=${work.answer.version}`;

function packetAddress(work, plan) {
  const names = inOrder(plan).filter(n => !left.has(n));
  return `/api/copies/${work.id}/packet?${new URLSearchParams([["version", work.answer.version], ...names.map(n => ["file", n])])}`;
}

function setPaper(work, papers, name, isOn) {
  const next = isOn ? [...papers, name] : papers.filter(p => typeof p !== "string" || p.toLowerCase() !== name.toLowerCase());
  work.edit(text => next.length ? put(text, "sheets.paper", next) : without(text, "sheets.paper"));
}
