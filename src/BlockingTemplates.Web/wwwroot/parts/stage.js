// A drawing of the piece with its fields beside their places, and handles on the curve.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { put } from "/project.js";
import { written } from "/units.js";

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const fieldGap = 10;
const mostAbove = 300;

let drag = null;

// The letters of a picture's places, by path.
export function lettered(picture) {
  return new Map((picture?.places ?? []).map((p, i) => [p.path, letters[i] ?? String(i + 1)]));
}

export function drawing(work, which, names) {
  const picture = work.answer?.[which];
  if (!picture) return nothing;
  const unit = work.answer.unit;
  const byLetter = lettered(picture);
  return html`<div class="drawn" data-which=${which} data-width=${picture.width} data-height=${picture.height}>
    <div class="paper" data-picture=${which}></div>
    <svg class="over" viewBox="0 0 ${picture.width} ${picture.height}" role="group" aria-label=${which === "finished" ? "Places on the finished piece" : "Handles on the unblocked piece"}>
      ${picture.places.map((p, i) => svg`<g class=${p.handle ? "place drags" : "place"} transform="translate(${p.x} ${p.y})" data-handle=${p.path}
        tabindex=${p.handle ? "0" : nothing} role=${p.handle ? "slider" : nothing} aria-hidden=${p.handle ? nothing : "true"}
        aria-label=${p.handle ? names.get(p.path) ?? p.path : nothing}
        aria-valuemin=${p.handle ? (p.handle.isSigned ? -10000 : 0) : nothing} aria-valuemax=${p.handle ? 10000 : nothing}
        aria-valuenow=${p.handle ? Math.round(p.handle.valueMm) : nothing} aria-valuetext=${p.handle ? `${written(p.handle.valueMm, unit)} ${unit.name}` : nothing}
        @pointerdown=${e => grab(e, work, which, i)} @pointermove=${move} @pointerup=${drop} @pointercancel=${drop} @keydown=${e => nudge(e, work, which, i)}>
        <circle class="reach" r="6.5"></circle><circle class="knob" r="3.2"></circle><text y="1.45">${byLetter.get(p.path)}</text></g>`)}
    </svg></div>`;
}

// The place on the picture in its millimetres, the picture as it was when the drag began.
function at(e, frame) {
  return [(e.clientX - frame.left) / frame.scale, (e.clientY - frame.top) / frame.scale];
}

function grab(e, work, which, index) {
  const place = work.answer[which].places[index];
  if (!place.handle || e.button !== 0) return;
  e.preventDefault();
  e.currentTarget.focus();
  e.currentTarget.setPointerCapture(e.pointerId);
  const box = e.currentTarget.ownerSVGElement.getBoundingClientRect();
  const frame = { left: box.left, top: box.top, scale: box.width / work.answer[which].width };
  drag = { work, path: place.path, handle: place.handle, unit: work.answer.unit, frame, start: at(e, frame), last: null };
}

function move(e) {
  if (!drag) return;
  const [x, y] = at(e, drag.frame);
  const along = (x - drag.start[0]) * drag.handle.alongX + (y - drag.start[1]) * drag.handle.alongY;
  give(drag.work, drag.path, drag.handle, drag.handle.valueMm + along * drag.handle.mmPerMm, drag.unit);
}

function drop() {
  drag = null;
}

function give(work, path, handle, mm, unit) {
  const value = handle.isSigned ? mm : Math.max(mm, unit.step * unit.mm);
  const said = written(value, unit);
  if (drag && drag.last === said) return;
  if (drag) drag.last = said;
  work.edit(text => put(text, path, said));
}

function nudge(e, work, which, index) {
  const { handle, path } = work.answer[which].places[index];
  const count = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[e.key];
  if (!handle || !count) return;
  e.preventDefault();
  const unit = work.answer.unit;
  give(work, path, handle, handle.valueMm + count * unit.step * unit.mm, unit);
}

let look = 0;

// To be called when fields may have become larger or smaller: another width, another font.
export function lookAnew() {
  look++;
}

// Lays the fields out beside their places where there is room, else below the drawing: once for each answer.
export function layOut(room, picture, answer) {
  const drawn = room.querySelector(".drawn");
  if (!drawn || !picture || (room.laidOf === answer && room.laidLook === look)) return;
  [room.laidOf, room.laidLook] = [answer, look];
  const fields = [...room.querySelectorAll(".field[data-place]")];
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const width = room.clientWidth;
  const isWide = width >= 44 * rem && fields.length > 0;
  const key = `${width} ${rem} ${fields.map(f => `${f.dataset.place} ${f.offsetHeight}`)} ${picture.svg}`;
  const sameFields = `${width} ${rem} ${fields.map(f => f.dataset.place)}`;
  if (room.layKey === key) return;
  // What one types in or drags stays where it is.
  if (isWide && room.laidFields === sameFields && (drag || room.contains(document.activeElement))) return;
  [room.layKey, room.laidFields] = [key, sameFields];
  room.classList.toggle("beside", isWide);
  if (!isWide) {
    for (const element of [room, drawn, ...fields]) for (const name of ["left", "top", "width", "height"]) element.style.removeProperty(name);
    return;
  }
  const fieldWidth = 10.5 * rem;
  const drawnWidth = Math.min(width - 2 * fieldWidth - 4 * fieldGap, 34 * rem);
  const scale = drawnWidth / picture.width;
  const left = (width - drawnWidth) / 2;
  const lines = traced(drawn, picture, scale, left);
  const knobs = picture.places.map(p => ({ left: left + p.x * scale - 17, top: p.y * scale - 17, right: left + p.x * scale + 17, bottom: p.y * scale + 17 }));
  const placed = [];
  let lowest = picture.height * scale + fieldGap;
  for (const f of fields) {
    const place = picture.places.find(p => p.path === f.dataset.place);
    f.style.width = `${fieldWidth}px`;
    const [w, h] = [fieldWidth, f.offsetHeight];
    const found = place ? candidates(place, scale, left, w, h).map(c => ({ left: c[0], top: c[1], right: c[0] + w, bottom: c[1] + h }))
      .find(c => c.left >= 0 && c.right <= width && c.top >= -mostAbove && ![...placed, ...knobs, ...lines].some(o => meets(c, o))) : null;
    const where = found ?? { left: 0, top: Math.max(lowest, ...placed.map(p => p.bottom)) + fieldGap, right: w };
    where.bottom = where.top + h;
    placed.push(where);
  }
  // The drawing stands as far down as the highest field needs.
  const down = Math.max(0, ...placed.map(p => -p.top));
  put4(drawn, left, down, drawnWidth);
  fields.forEach((f, i) => put4(f, placed[i].left, placed[i].top + down, fieldWidth));
  lowest = Math.max(lowest, ...placed.map(p => p.bottom));
  room.style.height = `${lowest + down + fieldGap}px`;
}

// Points along every line of the drawing, so that no field covers one.
function traced(drawn, picture, scale, left) {
  if (drawn.tracedOf !== picture.svg) {
    const svg = drawn.querySelector(".paper svg");
    drawn.traced = [...svg?.querySelectorAll("path[stroke]") ?? []].flatMap(path => {
      const length = path.getTotalLength();
      return Array.from({ length: Math.ceil(length / 4) + 1 }, (_, i) => path.getPointAtLength(Math.min(length, 4 * i)));
    });
    drawn.tracedOf = picture.svg;
  }
  return drawn.traced.map(p => ({ left: left + p.x * scale, right: left + p.x * scale, top: p.y * scale, bottom: p.y * scale }));
}

function* ring(most) {
  for (let far = 0; far <= most; far += 14) {
    yield [far, 0];
    for (let aside = 16; aside <= far + 96; aside += 16) yield* [[far, aside], [far, -aside]];
  }
}

// Outward from the place first, then to either side of that.
function candidates(place, scale, left, w, h) {
  const [x, y] = [left + place.x * scale, place.y * scale];
  const [ax, ay] = [place.awayX, place.awayY];
  const clear = 22;
  return [...ring(360)].map(([far, aside]) => {
    const off = clear + far + Math.abs(ax) * w / 2 + Math.abs(ay) * h / 2;
    return [x + ax * off - ay * aside - w / 2, y + ay * off + ax * aside - h / 2];
  });
}

const meets = (a, b) => a.left < b.right + fieldGap / 2 && b.left < a.right + fieldGap / 2 && a.top < b.bottom + 4 && b.top < a.bottom + 4;

function put4(element, left, top, width) {
  element.style.left = `${left}px`;
  element.style.top = `${top}px`;
  element.style.width = `${width}px`;
}
