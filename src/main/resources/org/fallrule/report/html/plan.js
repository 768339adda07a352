/** The overview plan, drawn larger and moved about. What is written on it and its signs keep their size. */
class Plan {
  static MOST = 12;

  constructor(sheet) {
    this.sheet = sheet;
    this.svg = sheet.querySelector("svg");
    this.map = sheet.querySelector(".m-view");
    const ground = this.map.querySelector(".m-ground");
    this.width = Number(ground.getAttribute("width"));
    this.height = Number(ground.getAttribute("height"));
    this.steady = Plan.steadyParts(this.map);
    this.bar = new ScaleBar(this.svg.querySelector(".m-scale"));
    this.pointers = new Map();
    this.whole();
    this.listen();
  }

  /** What keeps its size: for each a function that draws it so at a magnification. */
  static steadyParts(map) {
    const badges = [...map.querySelectorAll("a")].flatMap(Plan.steadyBadge);
    const others = [...map.querySelectorAll("text, circle, [transform]")]
      .filter((each) => !each.closest("a") && !each.parentElement.closest(".m-view [transform]"))
      .map(Plan.steady);
    return [...badges, ...others];
  }

  static steady(element) {
    const number = (name) => Number(element.getAttribute(name));
    const moved = element.getAttribute("transform");
    if (moved) return (k) => element.setAttribute("transform", `${moved} scale(${1 / k})`);
    if (element.localName === "circle") {
      const r = number("r");
      return (k) => element.setAttribute("r", r / k);
    }
    return Plan.steadyAbout(element, number("x"), number("y") - 4);
  }

  /** A finding's number with the line that leads from it keep to the place that they point at. */
  static steadyBadge(badge) {
    const leader = badge.previousElementSibling;
    const [x, y] = leader.getAttribute("d").split("L")[1].split(" ").map(Number);
    return [Plan.steadyAbout(leader, x, y), Plan.steadyAbout(badge, x, y)];
  }

  static steadyAbout(element, x, y) {
    return (k) => element.setAttribute("transform", `translate(${x} ${y}) scale(${1 / k}) translate(${-x} ${-y})`);
  }

  whole() {
    this.set(1, 0, 0);
  }

  /** Magnifies by a factor; a place on the sheet stays where it is. */
  zoom(factor, x = this.width / 2, y = this.height / 2) {
    const k = Math.min(Plan.MOST, Math.max(1, this.k * factor));
    this.set(k, x - (x - this.x) * k / this.k, y - (y - this.y) * k / this.k);
  }

  pan(dx, dy) {
    this.set(this.k, this.x + dx, this.y + dy);
  }

  /** Brings a box, in the unmagnified sheet's pixels, to the middle, so large that its surroundings stay in sight. */
  show(box) {
    const room = 0.4 * Math.min(this.width / Math.max(box.width, 1), this.height / Math.max(box.height, 1));
    const k = Math.min(3, Math.max(1, room));
    this.set(k, this.width / 2 - k * (box.x + box.width / 2), this.height / 2 - k * (box.y + box.height / 2));
  }

  set(k, x, y) {
    const old = this.k;
    this.k = k;
    this.x = Math.min(0, Math.max(this.width * (1 - k), x));
    this.y = Math.min(0, Math.max(this.height * (1 - k), y));
    this.map.setAttribute("transform", `translate(${this.x} ${this.y}) scale(${k})`);
    this.sheet.classList.toggle("zoomed", k > 1);
    if (k !== old) {
      this.steady.forEach((draw) => draw(k));
      this.bar.draw(k);
    }
  }

  listen() {
    const sheet = this.sheet;
    sheet.addEventListener("wheel", (event) => this.onWheel(event), { passive: false });
    sheet.addEventListener("keydown", (event) => this.onKey(event));
    sheet.addEventListener("pointerdown", (event) => this.onDown(event));
    sheet.addEventListener("pointermove", (event) => this.onMove(event));
    ["pointerup", "pointercancel", "pointerleave"].forEach((name) =>
      sheet.addEventListener(name, (event) => this.pointers.delete(event.pointerId)));
    sheet.addEventListener("dragstart", (event) => event.preventDefault());
    sheet.addEventListener("click", (event) => this.onClick(event), true);
  }

  /** Where an event lies on the sheet. */
  place(event) {
    const shown = this.svg.getBoundingClientRect();
    const unit = this.svg.viewBox.baseVal.width / shown.width;
    return { x: (event.clientX - shown.left) * unit, y: (event.clientY - shown.top) * unit, unit };
  }

  /** The wheel scrolls the page until the plan has been clicked, and again when the whole plan is in sight. */
  onWheel(event) {
    const out = event.deltaY > 0;
    const wanted = event.ctrlKey || this.sheet.contains(document.activeElement);
    if (!wanted || (out && this.k === 1 && !event.ctrlKey)) return;
    event.preventDefault();
    const { x, y } = this.place(event);
    const turned = event.deltaY * (event.deltaMode === 0 ? 1 : 20);
    this.zoom(Math.exp(-Math.max(-60, Math.min(60, turned)) / 200), x, y);
  }

  onKey(event) {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const step = 60;
    const moves = { ArrowLeft: [step, 0], ArrowRight: [-step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] };
    if (event.key === "+" || event.key === "=") this.zoom(1.5);
    else if (event.key === "-" || event.key === "_") this.zoom(1 / 1.5);
    else if (event.key === "0") this.whole();
    else if (moves[event.key] && this.k > 1) this.pan(...moves[event.key]);
    else return;
    event.preventDefault();
  }

  onDown(event) {
    if (event.button > 0) return;
    if (this.pointers.size === 0) this.travelled = 0;
    this.pointers.set(event.pointerId, event);
  }

  /** One finger or the mouse drags; two pinch. */
  onMove(event) {
    const before = this.pointers.get(event.pointerId);
    if (!before) return;
    const others = [...this.pointers.values()].filter((each) => each.pointerId !== event.pointerId);
    this.pointers.set(event.pointerId, event);
    const dx = event.clientX - before.clientX;
    const dy = event.clientY - before.clientY;
    this.travelled += Math.abs(dx) + Math.abs(dy);
    const { unit } = this.place(event);
    if (others.length === 0) {
      if (this.travelled > 5 && this.k > 1) this.drag(event, dx * unit, dy * unit);
    } else {
      this.pinch(others[0], before, event, unit);
    }
  }

  drag(event, dx, dy) {
    if (!this.sheet.hasPointerCapture(event.pointerId)) this.sheet.setPointerCapture(event.pointerId);
    this.pan(dx, dy);
  }

  pinch(still, before, now, unit) {
    const apart = (a) => Math.max(1, Math.hypot(a.clientX - still.clientX, a.clientY - still.clientY));
    const { x, y } = this.place({
      clientX: (still.clientX + now.clientX) / 2,
      clientY: (still.clientY + now.clientY) / 2,
    });
    this.zoom(apart(now) / apart(before), x, y);
    this.pan((now.clientX - before.clientX) / 2 * unit, (now.clientY - before.clientY) / 2 * unit);
  }

  /** The click that ends a drag chooses nothing. */
  onClick(event) {
    if (event.detail > 0 && this.travelled > 5) {
      event.preventDefault();
      event.stopPropagation();
    }
  }
}

/** The scale bar beside the plan: it keeps a round number of units, whatever the magnification. */
class ScaleBar {
  constructor(group) {
    [this.whole, this.half] = group.querySelectorAll("rect");
    this.label = group.querySelectorAll("text")[1];
    this.px = Number(this.whole.getAttribute("width"));
    [, this.number, this.unit] = /^([\d.]+) (.*)$/.exec(this.label.textContent);
  }

  draw(k) {
    const most = this.number / k;
    const ten = 10 ** Math.floor(Math.log10(most) + 1e-9);
    const shown = ten * [5, 2, 1].find((each) => each * ten <= most * (1 + 1e-9));
    const px = this.px * k * shown / this.number;
    this.whole.setAttribute("width", px);
    this.half.setAttribute("width", px / 2);
    this.label.setAttribute("x", px);
    this.label.textContent = `${Number(shown.toPrecision(1))} ${this.unit}`;
  }
}
