(function () {
  "use strict";
  var bar = document.getElementById("filter");
  var shown = document.getElementById("shown");
  var findings = Array.from(document.querySelectorAll("[data-outcome]"));
  var buttons = Array.from(bar.querySelectorAll("button"));
  function show(outcome) {
    var count = 0;
    findings.forEach(function (finding) {
      finding.hidden = outcome !== "" && finding.dataset.outcome !== outcome;
      count += finding.hidden ? 0 : 1;
    });
    buttons.forEach(function (button) {
      button.setAttribute("aria-pressed", String(button.dataset.show === outcome));
    });
    shown.textContent = count + " of " + findings.length + " shown";
  }
  buttons.forEach(function (button) {
    button.addEventListener("click", function () { show(button.dataset.show); });
  });
  addEventListener("hashchange", function () {
    var target = document.getElementById(location.hash.slice(1));
    if (target && target.hidden) { show(""); target.scrollIntoView(); }
  });
  addEventListener("beforeprint", function () { show(""); });
  bar.hidden = false;
})();
