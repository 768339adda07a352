/** Which findings are shown. */
class Filter {
  constructor(bar, findings) {
    this.bar = bar;
    this.findings = findings;
    this.outcomes = [...bar.querySelectorAll("[name=outcome]")];
    [this.rule, this.feature, this.words] = ["rule", "feature", "words"].map((name) => bar.querySelector(`[name=${name}]`));
    this.shown = bar.querySelector("#shown");
    this.texts = new Map();
    ["input", "change"].forEach((name) => bar.addEventListener(name, () => this.changed()));
    bar.querySelector("#show-all").addEventListener("click", () => this.choose({}));
    bar.hidden = false;
  }

  /** Told after every change. */
  onChange() {}

  /** What is asked for; what is not asked for is left out. */
  asked() {
    const asked = {};
    const outcomes = this.outcomes.filter((box) => box.checked).map((box) => box.value);
    if (outcomes.length > 0) asked.outcome = outcomes.join(",");
    ["rule", "feature", "words"].forEach((name) => {
      const value = this[name].value.trim();
      if (value !== "") asked[name] = value;
    });
    return asked;
  }

  /** Asks for something; what the page does not have is not asked for. */
  choose({ outcome = "", rule = "", feature = "", words = "" }) {
    const outcomes = outcome.split(",");
    this.outcomes.forEach((box) => { box.checked = outcomes.includes(box.value); });
    Filter.pick(this.rule, rule);
    Filter.pick(this.feature, feature);
    this.words.value = words;
    this.changed();
  }

  static pick(select, value) {
    select.value = value;
    if (select.selectedIndex < 0) select.value = "";
  }

  changed() {
    const asked = this.asked();
    const count = this.findings.filter((finding) => {
      const fits = this.fits(finding, asked);
      finding.classList.toggle("out", !fits);
      return fits;
    }).length;
    this.shown.textContent = `${count} of ${this.findings.length} findings shown`;
    this.bar.classList.toggle("chosen", Object.keys(asked).length > 0);
    this.onChange(asked);
  }

  fits(finding, asked) {
    const { outcome, rule, features } = finding.dataset;
    return (!asked.outcome || asked.outcome.split(",").includes(outcome))
      && (!asked.rule || asked.rule === rule)
      && (!asked.feature || features.split("\n").includes(asked.feature))
      && (!asked.words || this.hasWords(finding, asked.words));
  }

  hasWords(finding, words) {
    if (!this.texts.has(finding)) {
      const parts = [...finding.querySelectorAll(".number, .title, .says, .missing, .facts")];
      this.texts.set(finding, parts.map((part) => part.textContent).join(" ").toLowerCase());
    }
    const text = this.texts.get(finding);
    return words.toLowerCase().split(/\s+/).every((word) => text.includes(word));
  }

  /** Sees to it that a finding is shown. */
  reveal(finding) {
    if (finding.classList.contains("out")) this.choose({});
  }
}
