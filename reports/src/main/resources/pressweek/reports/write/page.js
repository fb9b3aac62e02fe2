(function () {
  "use strict";
  function two(n) { return (n > 9 ? "" : "0") + n; }
  function printed() {
    var now = new Date();
    var text = "printed " + now.getFullYear() + "-" + two(now.getMonth() + 1) + "-" + two(now.getDate())
      + " " + two(now.getHours()) + ":" + two(now.getMinutes());
    document.querySelectorAll(".printed").forEach(function (e) { e.textContent = text; });
  }
  printed();
  window.addEventListener("beforeprint", printed);

  var detail = document.querySelector(".detail");
  var wall = document.querySelector(".wall");
  function show(event) {
    var mark = event.target.closest("a, .gap, .wait, .due, .away");
    var title = mark ? mark.querySelector("title") : null;
    if (title) { detail.textContent = title.textContent; }
  }
  if (detail) {
    detail.textContent = "Point at a mark, or step through the runs with the Tab key, to read it here.";
    detail.classList.add("live");
    wall.addEventListener("focusin", show);
    wall.addEventListener("mouseover", show);
  }
})();
