/* Moves through the screens of a projector view, lets the steps of a working appear one after another, and fits each screen to the room it has. Without this script they stand one below the other. */
(function () {
  "use strict";

  var PHONE = 600;
  var LEAST_ON_A_PHONE = 16;
  var LEAST = 9;
  var SWIPE = 50;
  var IN_SIGHT = 4;

  var root = document.documentElement;
  var main = document.getElementById("main");
  var screens = Array.prototype.slice.call(document.querySelectorAll(".screen"));
  var back = document.getElementById("back");
  var on = document.getElementById("on");
  var where = document.getElementById("where");
  var jump = document.getElementById("jump");
  var outline = document.getElementById("outline");
  var total = screens.filter(isRegular).length;
  var now = -1;
  var beats = [];
  var shown = 0;
  var touch = null;

  /* A further example is passed over unless somebody asks for it. */
  function isRegular(screen) {
    return !screen.dataset.further;
  }

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
    each(tables ? ".scroll, pre, .content, .beside > div" : ".content", function (box) {
      whole = whole && box.scrollWidth <= box.clientWidth + 1 && box.scrollHeight <= box.clientHeight + 1;
    });
    return whole;
  }

  /* How many of the parts that appear one after another stand there at the start: the first step of a working, but no answer. */
  function least() {
    return beats.length > 0 && beats[0].tagName === "LI" ? 1 : 0;
  }

  /* Steps before the last are cut down to what they gave, and to the last few of them. */
  function reveal(count) {
    beats.forEach(function (beat, i) {
      beat.classList.toggle("ahead", i >= count);
      beat.classList.toggle("done", i < count - 1);
      beat.classList.toggle("gone", i < count - 1 - IN_SIGHT);
    });
  }

  /* The largest type up to a size at which what is shown now fits. */
  function largest(smallest, size, tables) {
    if (fits(size, tables)) {
      return size;
    }
    var small = smallest;
    var large = size;
    while (large - small > 0.5) {
      var middle = (small + large) / 2;
      if (fits(middle, tables)) {
        small = middle;
      } else {
        large = middle;
      }
    }
    return small;
  }

  /* The largest type at which the screen holds everything, whichever step is shown. On a phone text stays large enough to read and the screen scrolls instead. */
  function fit() {
    var phone = window.innerWidth < PHONE;
    var size = Math.max(phone ? 19 : LEAST, Math.min(window.innerHeight * 0.056, window.innerWidth * 0.036));
    main.classList.remove("scrolls");
    for (var count = least(); count <= beats.length; count++) {
      reveal(count);
      size = largest(phone ? LEAST_ON_A_PHONE : LEAST, size, !phone);
    }
    reveal(shown);
    // a scroll bar would change the width while it is measured, so it comes last
    main.classList.toggle("scrolls", !fits(size, !phone));
  }

  /* Where we are: the number, and the title of the screen and the step, which are said as well. */
  function tell() {
    var screen = screens[now];
    var words = screen.getAttribute("aria-label");
    var title = words.slice(words.indexOf(": ") + 2);
    var regular = screens.slice(0, now + 1).filter(isRegular).length;
    var step = shown > 0 && beats.length > 0 ? ". " + (beats.length > 1 ? shown + " of " + beats.length + ": " : "") + beats[shown - 1].dataset.beat : "";
    where.firstElementChild.textContent = isRegular(screen) ? regular + " of " + total : "Further example";
    where.lastElementChild.textContent = ": " + title + step;
    back.setAttribute("aria-disabled", String(now === 0));
    on.setAttribute("aria-disabled", String(now === screens.length - 1 && shown === beats.length));
    history.replaceState(null, "", "#" + screen.id + (shown > least() ? "." + shown : ""));
  }

  /* Shows a screen, with so many of its parts; -1 means all. */
  function show(number, count) {
    var next = Math.max(0, Math.min(screens.length - 1, number));
    if (next !== now) {
      if (now >= 0) {
        screens[now].classList.remove("now");
      }
      now = next;
      screens[now].classList.add("now");
      main.scrollTop = 0;
    }
    beats = Array.prototype.slice.call(screens[now].querySelectorAll("[data-beat]"));
    shown = count === -1 ? beats.length : Math.max(least(), Math.min(beats.length, count || 0));
    fit();
    tell();
  }

  function forward() {
    if (shown < beats.length) {
      shown++;
      reveal(shown);
      fitFormulas();
      tell();
      return;
    }
    var next = now + 1;
    while (next < screens.length && !isRegular(screens[next]) && screens[next].dataset.further !== screens[now].dataset.further) {
      next++;
    }
    if (next < screens.length) {
      show(next, 0);
    }
  }

  function backward() {
    if (shown > least()) {
      shown--;
      reveal(shown);
      fitFormulas();
      tell();
      return;
    }
    var next = now - 1;
    while (next > 0 && !isRegular(screens[next]) && screens[next].dataset.further !== screens[now].dataset.further) {
      next--;
    }
    if (next >= 0) {
      show(next, -1);
    }
  }

  /* The screen that the address names: by its own name, or by the name of something on it; perhaps with how much of it is shown. */
  function named() {
    var parts = /^#(.+?)(?:\.(\d+))?$/.exec(location.hash);
    var target = parts && document.getElementById(decodeURIComponent(parts[1]));
    var screen = target && target.closest(".screen");
    return screen ? { number: screens.indexOf(screen), count: Number(parts[2] || 0) } : null;
  }

  function goToNamed() {
    var place = named();
    if (place) {
      show(place.number, place.count);
    }
  }

  function unfold(open) {
    outline.hidden = !open;
    jump.setAttribute("aria-expanded", String(open));
    if (!open) {
      return;
    }
    var current = null;
    Array.prototype.forEach.call(outline.querySelectorAll("a"), function (link) {
      var screen = document.getElementById(link.hash.slice(1));
      link.removeAttribute("aria-current");
      if (screens.indexOf(screen) <= now) {
        current = link;
      }
    });
    current.setAttribute("aria-current", "true");
    current.focus();
  }

  function moves(event) {
    var target = event.target.closest ? event.target : document.body;
    var presses = target.closest("a, button, summary") !== null;
    var box = target.closest(".scroll, pre");
    var scrolls = box !== null && box.scrollWidth > box.clientWidth + 1;
    var higher = main.scrollHeight > main.clientHeight + 1;
    switch (event.key) {
      case "ArrowRight": return scrolls ? null : forward;
      case "ArrowLeft": return scrolls ? null : backward;
      case "PageDown": return forward;
      case "PageUp": return backward;
      case "ArrowDown": return higher ? null : forward;
      case "ArrowUp": return higher ? null : backward;
      case " ": return presses ? null : event.shiftKey ? backward : forward;
      case "Home": return function () { show(0, 0); };
      case "End": return function () { show(screens.length - 1, 0); };
      default: return null;
    }
  }

  document.addEventListener("keydown", function (event) {
    if (!outline.hidden) {
      if (event.key === "Escape") {
        unfold(false);
        jump.focus();
      }
      return;
    }
    var move = event.altKey || event.ctrlKey || event.metaKey ? null : moves(event);
    if (move !== null) {
      event.preventDefault();
      move();
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
      (across < 0 ? forward : backward)();
    }
    touch = null;
  }, { passive: true });
  back.addEventListener("click", backward);
  on.addEventListener("click", forward);
  jump.addEventListener("click", function () { unfold(outline.hidden); });
  outline.addEventListener("click", function (event) {
    var link = event.target.closest("a");
    if (link) {
      event.preventDefault();
      unfold(false);
      show(screens.indexOf(document.getElementById(link.hash.slice(1))), 0);
      on.focus();
    }
  });
  window.addEventListener("hashchange", goToNamed);
  window.addEventListener("resize", fit);

  root.classList.add("live");
  [back, on, where, jump].forEach(function (part) { part.hidden = false; });
  var begin = named() || { number: 0, count: 0 };
  show(begin.number, begin.count);
})();
