/** Lights up where a finding lies, or what a feature is, on every plan and long section of the page. */
class Light {
  constructor(plans, bar, said) {
    this.plans = plans;
    this.sections = [...document.querySelectorAll("[data-section]")];
    this.bar = bar;
    this.said = said;
    this.drawn = [];
  }

  out() {
    this.drawn.forEach((element) => element.remove());
    this.drawn = [];
    document.querySelectorAll(".lit").forEach((element) => element.classList.remove("lit"));
    this.finding = null;
    this.bar.hidden = true;
    this.bar.replaceChildren();
    this.said.textContent = "";
  }

  /** Lights a finding's place; gives whether it has one. */
  lightFinding(finding) {
    const { number, place, along } = finding.dataset;
    this.out();
    this.finding = finding;
    finding.classList.add("lit");
    document.querySelectorAll(`svg a[href="#finding-${number}"]`).forEach((badge) => badge.classList.add("lit"));
    if (place) this.plans.forEach((plan) => this.drawPlace(plan, place));
    const sections = this.drawStretches(along);
    this.tell(finding, Boolean(place), sections);
    return Boolean(place);
  }

  /** Lights a feature wherever it is drawn. */
  lightFeature(name) {
    this.out();
    document.querySelectorAll("[data-feature]").forEach((shape) => {
      if (shape.dataset.feature === name && !shape.closest("article, .settled")) shape.classList.add("lit");
    });
  }

  /** A finding's place lies over the ground and under every line, so that nothing is hidden by its light. */
  drawPlace(plan, data) {
    const [left, top, unit] = plan.map.dataset.frame.split(" ").map(Number);
    const group = Light.element(plan.svg, "g", {
      class: "lit-place",
      transform: `scale(${unit} ${-unit}) translate(${-left} ${-top})`,
    });
    ["lit-edge", "lit-glow"].forEach((name) => group.append(Light.element(plan.svg, "path", { class: name, d: data })));
    const lines = [".layer-easement", ".layer-lot", ".layer-utility", ".layer-pipe"].map((name) => plan.map.querySelector(name));
    plan.map.insertBefore(group, lines.find(Boolean) || null);
    this.drawn.push(group);
  }

  /** The numbers of the sections on which something was lit. */
  drawStretches(along) {
    const lit = new Set();
    along.split(" ").filter(Boolean).forEach((stretch) => {
      const [number, from, to] = stretch.split(/[:-]/);
      this.sections.filter((sheet) => sheet.dataset.section === number).forEach((sheet) => {
        this.drawStretch(sheet.querySelector("svg"), Number(from), Number(to));
        lit.add(number);
      });
    });
    return [...lit];
  }

  drawStretch(svg, from, to) {
    const [zero, unit, top, height] = svg.dataset.frame.split(" ").map(Number);
    const least = 12;
    const width = Math.max(least, (to - from) * unit);
    const x = zero + (from + to) / 2 * unit - width / 2;
    const band = Light.element(svg, "rect", { class: "lit-band", x, y: top, width, height });
    svg.querySelector(".m-ground").after(band);
    this.drawn.push(band);
  }

  static element(svg, name, attributes) {
    const element = document.createElementNS(svg.namespaceURI, name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    return element;
  }

  /** A bar that says what is lit and leads there and back. */
  tell(finding, onPlan, sections) {
    const ways = [];
    if (onPlan) ways.push(["plan", "plan"]);
    sections.forEach((number) => ways.push([`along-${number}`, `long section ${number}`]));
    const { number } = finding.dataset;
    const where = ways.length > 0 ? "is lit on " + ways.map(([, name]) => name).join(", ") : "lies nowhere on the drawings";
    this.said.textContent = `Finding ${number} ${where}.`;
    this.bar.append(`Finding ${number} is lit on `);
    [...ways, [`finding-${number}`, "back to the finding"]].forEach(([id, name]) => this.bar.append(Light.link(id, name), " "));
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = "turn off";
    button.addEventListener("click", () => this.onOut());
    this.bar.append(button);
    this.bar.hidden = ways.length === 0;
  }

  /** Told when the reader has seen enough. */
  onOut() {}

  static link(id, name) {
    const link = document.createElement("a");
    link.href = `#${id}`;
    link.textContent = name;
    return link;
  }
}
