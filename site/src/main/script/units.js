/* The units that the reader chose once for all pages: metric or American. The choice stands at the foot of every page, is kept on the device and
   written on the html element, where the page's program finds it; without scripts the units of the site stand. Lists of tables show those of
   the chosen world first. */
(function () {
  "use strict";
  var KEY = "loomwright-units";
  var html = document.documentElement;
  var box = document.querySelector(".units");
  var select = box && box.querySelector("select");

  function kept() {
    try {
      return localStorage.getItem(KEY);
    } catch (refused) {
      return null;
    }
  }

  function sort(list) {
    var items = Array.from(list.children);
    items.forEach(function (item, at) { item.dataset.at = item.dataset.at || at; });
    items.sort(function (one, other) {
      var first = (other.dataset.world === html.dataset.units) - (one.dataset.world === html.dataset.units);
      return first || one.dataset.at - other.dataset.at;
    });
    items.forEach(function (item) { list.append(item); });
  }

  function use(units) {
    html.dataset.units = units;
    if (select) {
      select.value = units;
    }
    document.querySelectorAll("[data-worlds]").forEach(sort);
  }

  if (select) {
    box.hidden = false;
    select.addEventListener("change", function () {
      try {
        localStorage.setItem(KEY, select.value);
      } catch (refused) {
        /* Then it holds for this page alone. */
      }
      use(select.value);
      document.dispatchEvent(new Event("units"));
    });
  }
  var chosen = kept();
  use(chosen === "metric" || chosen === "american" ? chosen : html.dataset.units);
})();
