/** Ties the list of findings to the drawings, and both to the address, so that a view can be sent to somebody. */
const findings = [...document.querySelectorAll("[data-outcome]")];
const plans = [...document.querySelectorAll("#plan .wide, #plan .narrow")].map((sheet) => new Plan(sheet));
const filter = new Filter(document.getElementById("filter"), findings);
const light = new Light(plans, document.getElementById("lit"), document.getElementById("said"));

/** The plan that is shown at this width. */
function shownPlan() {
  return plans.find((plan) => plan.sheet.offsetParent !== null) || plans[0];
}

function writeAddress() {
  const asked = new URLSearchParams(filter.asked());
  if (light.finding) asked.set("finding", light.finding.dataset.number);
  const hash = asked.toString();
  history.replaceState(null, "", hash ? `#${hash}` : location.pathname + location.search);
}

/** The address asks for findings, or leads to a part of the page. */
function readAddress() {
  const hash = location.hash.slice(1);
  if (hash.includes("=")) {
    const asked = Object.fromEntries(new URLSearchParams(hash));
    const finding = document.getElementById(`finding-${asked.finding}`);
    filter.choose(asked);
    if (finding) lightFinding(finding);
    return;
  }
  const target = document.getElementById(hash);
  if (findings.includes(target)) {
    filter.reveal(target);
    lightFinding(target);
    target.scrollIntoView();
  } else if (filter.bar.classList.contains("chosen") || light.finding) {
    writeAddress();
  }
}

function lightFinding(finding) {
  const lies = light.lightFinding(finding);
  writeAddress();
  return lies;
}

function showOnPlan(finding) {
  lightFinding(finding);
  const plan = shownPlan();
  const place = plan.map.querySelector(".lit-place");
  plan.whole();
  plan.show(boxOnSheet(place, plan));
  place.scrollIntoView({ block: "center" });
  plan.sheet.focus({ preventScroll: true });
}

/** The box of a lit place in the pixels of the unmagnified sheet. */
function boxOnSheet(place, plan) {
  const box = place.getBBox();
  const [left, top, unit] = plan.map.dataset.frame.split(" ").map(Number);
  return { x: (box.x - left) * unit, y: (top - box.y - box.height) * unit, width: box.width * unit, height: box.height * unit };
}

function showFindingsOf(feature) {
  filter.choose({ feature });
  const heading = document.getElementById("filter-name");
  filter.bar.scrollIntoView();
  heading.focus({ preventScroll: true });
}

/** A button on every finding that lies somewhere, and a click on the finding itself. */
function listenToFinding(finding) {
  if (!finding.dataset.place || plans.length === 0) return;
  const button = document.createElement("button");
  button.type = "button";
  button.className = "show";
  button.textContent = "show on plan";
  button.setAttribute("aria-label", `show on plan: finding ${finding.dataset.number}`);
  button.addEventListener("click", () => showOnPlan(finding));
  finding.querySelector(".says").after(button);
  finding.addEventListener("click", (event) => {
    const own = event.target.closest("a, button, summary");
    if (!own && getSelection().isCollapsed) lightFinding(finding);
  });
}

const GROUND = ".layer-street, .layer-drive, .layer-walk, .layer-building, .layer-water-body, .layer-lot, .layer-flood-zone";

/** The feature under a pointer. A line or a sign within a finger's reach goes before the ground. */
function featureAt(event) {
  const reach = event.pointerType === "touch" ? 14 : 7;
  const around = [[0, 0], [reach, 0], [-reach, 0], [0, reach], [0, -reach]];
  const under = around
    .map(([dx, dy]) => document.elementFromPoint(event.clientX + dx, event.clientY + dy))
    .map((element) => element && element.closest("#plan [data-feature], #sections [data-feature]"))
    .filter(Boolean);
  return under.find((shape) => !shape.closest(GROUND)) || under[0];
}

/** What findings speak of can be chosen on the drawings; what needs attention also by keyboard. */
function listenToFeatures() {
  const open = new Set();
  const all = new Map();
  findings.forEach(({ dataset }) => dataset.features.split("\n").filter(Boolean).forEach((name) => {
    all.set(name, (all.get(name) || 0) + 1);
    if (["fails", "borderline", "cannot_tell"].includes(dataset.outcome)) open.add(name);
  }));
  plans.forEach((plan) => plan.map.querySelectorAll("[data-feature]").forEach((shape) => {
    const name = shape.dataset.feature;
    if (!open.has(name)) return;
    shape.setAttribute("tabindex", "0");
    shape.setAttribute("role", "button");
    shape.setAttribute("aria-label", `${name}, findings: ${all.get(name)}`);
  }));
  return all;
}

function listenToDrawings() {
  const counts = listenToFeatures();
  const show = (shape) => shape && counts.has(shape.dataset.feature) && showFindingsOf(shape.dataset.feature);
  document.querySelectorAll("#plan .sheet, #sections .sheet").forEach((sheet) => {
    sheet.addEventListener("click", (event) => {
      if (!event.target.closest("a")) show(featureAt(event));
    });
    sheet.addEventListener("keydown", (event) => {
      if ((event.key === "Enter" || event.key === " ") && event.target.dataset.feature) {
        event.preventDefault();
        show(event.target);
      }
    });
  });
}

function readyPlans() {
  const tools = document.getElementById("plan-tools");
  if (!tools) return;
  plans.forEach(({ sheet, svg }) => {
    svg.setAttribute("role", "group");
    sheet.setAttribute("tabindex", "0");
    sheet.setAttribute("role", "group");
    sheet.setAttribute("aria-label", "Plan, to be moved and zoomed");
    sheet.setAttribute("aria-describedby", "plan-help");
  });
  tools.hidden = false;
  const acts = { in: (plan) => plan.zoom(1.5), out: (plan) => plan.zoom(1 / 1.5), all: (plan) => plan.whole() };
  tools.querySelectorAll("button").forEach((button) =>
    button.addEventListener("click", () => acts[button.dataset.view](shownPlan())));
}

filter.onChange = ({ feature }) => {
  if (feature) light.lightFeature(feature);
  else if (!light.finding) light.out();
  writeAddress();
};
light.onOut = () => {
  const { finding } = light;
  light.out();
  writeAddress();
  const button = finding.querySelector(".show");
  if (button) button.focus({ preventScroll: true });
};
addEventListener("keydown", (event) => {
  if (event.key === "Escape" && light.finding) light.onOut();
});
addEventListener("hashchange", readAddress);
readyPlans();
listenToDrawings();
findings.forEach(listenToFinding);
filter.shown.textContent = `${findings.length} of ${findings.length} findings shown`;
readAddress();
