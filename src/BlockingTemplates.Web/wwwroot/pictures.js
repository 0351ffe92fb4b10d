// The engine's drawings: put into the page as they come, moved and magnified by their view box.
const parser = new DOMParser();

// Puts an SVG text into an element, once; answers the svg element.
export function show(holder, text) {
  if (holder.shownText === text) return holder.querySelector("svg");
  const read = parser.parseFromString(text, "image/svg+xml").documentElement;
  const svg = document.importNode(read, true);
  svg.removeAttribute("width");
  svg.removeAttribute("height");
  svg.setAttribute("aria-hidden", "true");
  svg.setAttribute("focusable", "false");
  svg.querySelector("title")?.remove();
  holder.replaceChildren(svg);
  holder.shownText = text;
  return svg;
}

export function switchLayers(svg, isShown) {
  for (const layer of svg.querySelectorAll("g[data-name]")) {
    if (isShown(layer.dataset.name)) layer.removeAttribute("display");
    else layer.setAttribute("display", "none");
  }
}

const most = 12;

// Zoom and pan of what a holder shows, by wheel, fingers, keys and buttons.
export class Viewport {
  constructor(holder, changed) {
    Object.assign(this, { holder, changed, zoom: 1, x: 0.5, y: 0.5 });
    this.fingers = new Map();
    holder.addEventListener("wheel", e => {
      if (!e.ctrlKey && !e.metaKey && this.zoom === 1 && e.deltaY > 0) return;
      e.preventDefault();
      this.by(Math.exp(-e.deltaY / 400), e.clientX, e.clientY);
    }, { passive: false });
    holder.addEventListener("pointerdown", e => {
      if (e.pointerType === "mouse" && e.button !== 0) return;
      holder.setPointerCapture(e.pointerId);
      this.fingers.set(e.pointerId, [e.clientX, e.clientY]);
    });
    holder.addEventListener("pointermove", e => this.moved(e));
    for (const end of ["pointerup", "pointercancel"]) holder.addEventListener(end, e => this.fingers.delete(e.pointerId));
    holder.addEventListener("keydown", e => this.key(e));
  }

  moved(e) {
    const before = this.fingers.get(e.pointerId);
    if (!before) return;
    const now = [e.clientX, e.clientY];
    if (this.fingers.size === 1) {
      this.shift(now[0] - before[0], now[1] - before[1]);
    } else if (this.fingers.size === 2) {
      const [, other] = [...this.fingers].find(([id]) => id !== e.pointerId);
      const far = p => Math.hypot(p[0] - other[0], p[1] - other[1]);
      this.by(far(now) / Math.max(far(before), 1), (now[0] + other[0]) / 2, (now[1] + other[1]) / 2);
    }
    this.fingers.set(e.pointerId, now);
  }

  key(e) {
    const step = 40;
    const does = {
      "+": () => this.by(1.4), "=": () => this.by(1.4), "-": () => this.by(1 / 1.4), "0": () => this.whole(),
      ArrowLeft: () => this.shift(step, 0), ArrowRight: () => this.shift(-step, 0), ArrowUp: () => this.shift(0, step), ArrowDown: () => this.shift(0, -step),
    }[e.key];
    if (!does || e.ctrlKey || e.altKey || e.metaKey) return;
    e.preventDefault();
    does();
  }

  by(factor, clientX, clientY) {
    const box = this.holder.getBoundingClientRect();
    const [u, v] = [clientX === undefined ? 0.5 : (clientX - box.left) / box.width, clientY === undefined ? 0.5 : (clientY - box.top) / box.height];
    const before = this.zoom;
    this.zoom = Math.min(most, Math.max(1, this.zoom * factor));
    this.x += (u - 0.5) * (1 / before - 1 / this.zoom);
    this.y += (v - 0.5) * (1 / before - 1 / this.zoom);
    this.apply();
  }

  shift(dx, dy) {
    const box = this.holder.getBoundingClientRect();
    this.x -= dx / box.width / this.zoom;
    this.y -= dy / box.height / this.zoom;
    this.apply();
  }

  whole() {
    Object.assign(this, { zoom: 1, x: 0.5, y: 0.5 });
    this.apply();
  }

  apply() {
    const half = 0.5 / this.zoom;
    this.x = Math.min(1 - half, Math.max(half, this.x));
    this.y = Math.min(1 - half, Math.max(half, this.y));
    this.holder.style.touchAction = this.zoom > 1 ? "none" : "pan-y";
    const [w, h] = this.size ?? [1, 1];
    for (const svg of this.holder.querySelectorAll("svg.whole, .paper > svg"))
      svg.setAttribute("viewBox", `${(this.x - half) * w} ${(this.y - half) * h} ${w / this.zoom} ${h / this.zoom}`);
    this.changed?.();
  }
}
