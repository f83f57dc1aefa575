/* Moves through the screens of a projector view and fits each to the room it has. Without this script they stand one below the other. */
(function () {
  "use strict";

  var PHONE = 600;
  var LEAST_ON_A_PHONE = 16;
  var LEAST = 9;
  var SWIPE = 50;

  var root = document.documentElement;
  var main = document.getElementById("main");
  var screens = Array.prototype.slice.call(document.querySelectorAll(".screen"));
  var back = document.getElementById("back");
  var on = document.getElementById("on");
  var where = document.getElementById("where");
  var now = -1;
  var touch = null;

  function each(selector, act) {
    Array.prototype.forEach.call(screens[now].querySelectorAll(selector), act);
  }

  /* A formula never breaks, so a long one is set smaller by itself. */
  function fitFormulas() {
    each(".line", function (line) {
      var widest = 0;
      Array.prototype.forEach.call(line.children, function (math) {
        math.style.removeProperty("--fit");
        widest = Math.max(widest, math.getBoundingClientRect().width);
      });
      if (widest > line.clientWidth) {
        Array.prototype.forEach.call(line.children, function (math) {
          math.style.setProperty("--fit", (0.98 * line.clientWidth) / widest);
        });
      }
    });
  }

  function fits(size, tables) {
    root.style.setProperty("--type", size + "px");
    fitFormulas();
    var whole = main.scrollHeight <= main.clientHeight && main.scrollWidth <= main.clientWidth;
    each(tables ? ".scroll, pre, .content" : ".content", function (box) {
      whole = whole && box.scrollWidth <= box.clientWidth + 1 && box.scrollHeight <= box.clientHeight + 1;
    });
    return whole;
  }

  /* The largest type at which the screen holds everything. On a phone text stays large enough to read and the screen scrolls instead. */
  function fit() {
    var phone = window.innerWidth < PHONE;
    var most = Math.max(phone ? 19 : LEAST, Math.min(window.innerHeight * 0.056, window.innerWidth * 0.036));
    main.classList.remove("scrolls");
    var least = phone ? LEAST_ON_A_PHONE : LEAST;
    if (fits(most, !phone)) {
      return;
    }
    var small = least;
    var large = most;
    while (large - small > 0.5) {
      var middle = (small + large) / 2;
      if (fits(middle, !phone)) {
        small = middle;
      } else {
        large = middle;
      }
    }
    // a scroll bar would change the width while it is measured, so it comes last
    main.classList.toggle("scrolls", !fits(small, !phone));
  }

  function show(number) {
    var next = Math.max(0, Math.min(screens.length - 1, number));
    if (next === now) {
      return;
    }
    if (now >= 0) {
      screens[now].classList.remove("now");
    }
    now = next;
    screens[now].classList.add("now");
    where.textContent = now + 1 + " of " + screens.length;
    back.setAttribute("aria-disabled", String(now === 0));
    on.setAttribute("aria-disabled", String(now === screens.length - 1));
    history.replaceState(null, "", "#" + screens[now].id);
    main.scrollTop = 0;
    fit();
  }

  /* The screen that the address names: by its own name, or by the name of something on it. */
  function named() {
    var target = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
    var screen = target && target.closest(".screen");
    return screen ? screens.indexOf(screen) : -1;
  }

  function moves(event) {
    var target = event.target.closest ? event.target : document.body;
    var presses = target.closest("a, button, summary") !== null;
    var box = target.closest(".scroll, pre");
    var scrolls = box !== null && box.scrollWidth > box.clientWidth + 1;
    switch (event.key) {
      case "ArrowRight": return scrolls ? null : now + 1;
      case "ArrowLeft": return scrolls ? null : now - 1;
      case "PageDown": return now + 1;
      case "PageUp": return now - 1;
      case "ArrowDown": return main.scrollHeight > main.clientHeight + 1 ? null : now + 1;
      case "ArrowUp": return main.scrollHeight > main.clientHeight + 1 ? null : now - 1;
      case " ": return presses ? null : event.shiftKey ? now - 1 : now + 1;
      case "Home": return 0;
      case "End": return screens.length - 1;
      default: return null;
    }
  }

  document.addEventListener("keydown", function (event) {
    var to = event.altKey || event.ctrlKey || event.metaKey ? null : moves(event);
    if (to !== null) {
      event.preventDefault();
      show(to);
    }
  });
  document.addEventListener("touchstart", function (event) {
    var box = event.target.closest(".scroll, pre");
    var free = event.touches.length === 1 && !(box && box.scrollWidth > box.clientWidth + 1);
    touch = free ? event.touches[0] : null;
  }, { passive: true });
  document.addEventListener("touchend", function (event) {
    var end = event.changedTouches[0];
    var across = touch ? end.clientX - touch.clientX : 0;
    if (Math.abs(across) > SWIPE && Math.abs(across) > 2 * Math.abs(end.clientY - touch.clientY)) {
      show(now + (across < 0 ? 1 : -1));
    }
    touch = null;
  }, { passive: true });
  back.addEventListener("click", function () { show(now - 1); });
  on.addEventListener("click", function () { show(now + 1); });
  window.addEventListener("hashchange", function () {
    if (named() >= 0) {
      show(named());
    }
  });
  window.addEventListener("resize", fit);

  root.classList.add("live");
  [back, on, where].forEach(function (part) { part.hidden = false; });
  show(Math.max(0, named()));
})();
