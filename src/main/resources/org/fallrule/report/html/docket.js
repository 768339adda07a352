/** The table of plans: which of them are shown, made from the page's data when a reader chooses. */
class Plans {
  constructor(bar, data) {
    this.bar = bar;
    this.data = data;
    this.rows = document.getElementById("rows");
    this.more = document.getElementById("more");
    this.rest = document.getElementById("rest");
    this.shown = bar.querySelector("#shown");
    this.needs = [...bar.querySelectorAll("[name=need]")];
    [this.rule, this.county, this.words] = ["rule", "county", "words"].map((name) => bar.querySelector(`[name=${name}]`));
    this.marks = new Map([...document.querySelectorAll(".docket-map [data-n]")].map((mark) => [Number(mark.dataset.n), mark]));
    this.step = 200;
    this.limit = this.step;
    ["input", "change"].forEach((name) => bar.addEventListener(name, () => this.changed()));
    bar.querySelector("#show-all").addEventListener("click", () => this.showAll());
    this.more.addEventListener("click", () => this.showMore());
    document.querySelectorAll("button.pick").forEach((button) => {
      button.hidden = false;
      button.addEventListener("click", () => this.pick(button.dataset.rule));
    });
    if (this.rest) this.rest.hidden = true;
    bar.hidden = false;
    this.tell(data.sites, data.sites.length, false);
  }

  pick(rule) {
    this.rule.value = rule;
    this.changed();
    document.getElementById("sites").scrollIntoView();
    this.rule.focus({ preventScroll: true });
  }

  showAll() {
    this.needs.forEach((box) => { box.checked = false; });
    this.rule.value = "";
    this.county.value = "";
    this.words.value = "";
    this.changed();
    this.words.focus();
  }

  showMore() {
    const first = this.limit;
    this.limit += this.step;
    this.render(this.chosen());
    const next = this.rows.rows[first];
    const link = next && next.querySelector("a");
    if (link) link.focus();
  }

  changed() {
    this.limit = this.step;
    this.render(this.chosen());
  }

  chosen() {
    const needs = this.needs.filter((box) => box.checked).map((box) => box.value);
    const rule = this.rule.value === "" ? -1 : this.data.rules.indexOf(this.rule.value);
    const words = this.words.value.toLowerCase().split(/\s+/).filter((word) => word !== "");
    this.asked = needs.length > 0 || rule >= 0 || this.county.value !== "" || words.length > 0;
    return this.data.sites.filter((site) => (needs.length === 0 || needs.includes(site.need))
      && (rule < 0 || site.fails.includes(rule) || site.open.includes(rule))
      && (this.county.value === "" || site.county === this.county.value)
      && words.every((word) => Plans.text(site).includes(word)));
  }

  static text(site) {
    if (!site.text) site.text = [site.n, site.name, site.path, site.county, ...site.says].join(" ").toLowerCase();
    return site.text;
  }

  render(sites) {
    this.rows.replaceChildren(...sites.slice(0, this.limit).map((site) => this.row(site)));
    const chosen = new Set(sites.map((site) => site.n));
    this.marks.forEach((mark, number) => mark.classList.toggle("out", !chosen.has(number)));
    this.tell(sites, this.data.sites.length, this.asked);
  }

  tell(sites, all, asked) {
    const listed = Math.min(this.limit, sites.length);
    this.shown.textContent = `${sites.length} of ${all} plans` + (listed < sites.length ? `, the first ${listed} listed` : "");
    this.more.hidden = listed >= sites.length;
    this.bar.classList.toggle("chosen", asked);
  }

  row(site) {
    const row = document.createElement("tr");
    row.id = `site-${site.n}`;
    const name = Plans.element("th", "", "");
    name.scope = "row";
    name.dir = "auto";
    if (site.at === "") {
      name.append(site.name);
    } else {
      const link = Plans.element("a", "", site.name);
      link.href = site.at;
      name.append(link);
    }
    name.append(Plans.element("span", "path", site.path));
    const says = Plans.element("ul", "says", "");
    says.append(...site.says.map((words) => Plans.element("li", "", words)));
    const last = Plans.element("td", "", "");
    last.append(says);
    row.append(Plans.element("td", "n", site.n), name, this.need(site.need),
      ...site.counts.map((count) => Plans.element("td", "n", count)), Plans.element("td", "", site.county), last);
    return row;
  }

  need(word) {
    const box = this.needs.find((each) => each.value === word);
    const chip = Plans.element("span", `chip need ${word}`, "");
    const sign = Plans.element("span", "sign", box.dataset.sign);
    sign.setAttribute("aria-hidden", "true");
    chip.append(sign, ` ${box.dataset.spoken}`);
    const cell = Plans.element("td", "", "");
    cell.append(chip);
    return cell;
  }

  static element(name, look, text) {
    const element = document.createElement(name);
    if (look !== "") element.className = look;
    element.textContent = text;
    return element;
  }
}

new Plans(document.getElementById("filter"), JSON.parse(document.getElementById("data").textContent));
