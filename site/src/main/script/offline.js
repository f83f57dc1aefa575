/* On a web server only: has the browser keep the site, and says when a newer version is there. Nothing is loaded anew until the reader
   presses, and what was typed is put back. From a disk this does nothing at all. */
(function () {
  "use strict";

  var TYPED = "loomwright-typed";
  var HOUR = 3600000;
  var base = document.currentScript.src.replace(/[^/]*$/, "");
  var workers = navigator.serviceWorker;
  var pressed = false;
  var notice = null;

  if (location.protocol.indexOf("http") !== 0) {
    return;
  }

  function link(rel, file) {
    var element = document.createElement("link");
    element.rel = rel;
    element.href = base + file;
    document.head.append(element);
  }

  function fields() {
    return Array.prototype.filter.call(document.querySelectorAll("input[id], select[id], textarea[id]"), function (field) {
      return field.type !== "file" && field.type !== "password";
    });
  }

  function keepTyped() {
    var typed = {};
    fields().forEach(function (field) {
      typed[field.id] = field.type === "checkbox" || field.type === "radio" ? field.checked : field.value;
    });
    sessionStorage.setItem(TYPED, JSON.stringify({ page: location.pathname, typed: typed }));
  }

  /* The program of the page comes a moment after the page, and makes the forms of an example when that is touched. */
  function putBack(typed, tries) {
    fields().forEach(function (field) {
      var box = field.type === "checkbox" || field.type === "radio";
      var was = typed[field.id];
      if (was !== undefined && was !== (box ? field.checked : field.value)) {
        field[box ? "checked" : "value"] = was;
        field.dispatchEvent(new Event("input", { bubbles: true }));
        field.dispatchEvent(new Event("change", { bubbles: true }));
      }
      delete typed[field.id];
    });
    if (Object.keys(typed).length > 0 && tries > 0) {
      document.querySelectorAll("section.example").forEach(function (each) {
        each.dispatchEvent(new Event("focusin", { bubbles: true }));
      });
      setTimeout(function () { putBack(typed, tries - 1); }, 100);
    }
  }

  function putBackIfKept() {
    try {
      var kept = JSON.parse(sessionStorage.getItem(TYPED));
      sessionStorage.removeItem(TYPED);
      if (kept && kept.page === location.pathname) {
        putBack(kept.typed, 100);
      }
    } catch (error) {
      // a browser that keeps nothing has nothing to put back
    }
  }

  function load(waiting) {
    try {
      keepTyped();
    } catch (error) {
      notice.firstChild.textContent = "This browser keeps nothing, so write down what you typed. Then reload the page yourself.";
      return;
    }
    pressed = true;
    if (waiting) {
      waiting.postMessage("load");
    } else {
      location.reload();
    }
  }

  /* waiting is null if another window has loaded the new version already. */
  function say(waiting) {
    if (notice) {
      notice.remove();
    }
    notice = document.createElement("div");
    notice.className = "newer";
    notice.setAttribute("role", "status");
    var words = document.createElement("p");
    words.textContent = "A newer version of this site is here. Load it when it suits you; what you typed stays.";
    var now = document.createElement("button");
    now.type = "button";
    now.textContent = "Load it";
    now.addEventListener("click", function () { load(waiting); });
    notice.append(words, now);
    document.body.append(notice);
  }

  function sayKept(registration) {
    var channel = new MessageChannel();
    channel.port1.onmessage = function (event) {
      var end = document.querySelector("footer.end");
      if (end && !document.getElementById("kept")) {
        var words = document.createElement("p");
        words.id = "kept";
        words.textContent = "This browser keeps the whole site, so that it works without a network: " + event.data.files + " files, "
            + (event.data.bytes / 1e6).toFixed(1) + " MB.";
        end.append(words);
      }
    };
    registration.active.postMessage("size", [channel.port2]);
  }

  function watch(registration) {
    var looked = Date.now();
    if (registration.waiting && workers.controller) {
      say(registration.waiting);
    }
    registration.addEventListener("updatefound", function () {
      var coming = registration.installing;
      coming.addEventListener("statechange", function () {
        if (coming.state === "installed" && workers.controller) {
          say(coming);
        }
      });
    });
    document.addEventListener("visibilitychange", function () {
      if (!document.hidden && Date.now() - looked > HOUR) {
        looked = Date.now();
        registration.update().catch(function () { /* no network: another time */ });
      }
    });
    workers.ready.then(sayKept);
  }

  link("manifest", "loomwright.webmanifest");
  link("apple-touch-icon", "icon-192.png");
  window.addEventListener("load", putBackIfKept);
  if (!workers) {
    return;
  }
  var controlled = workers.controller !== null;
  workers.addEventListener("controllerchange", function () {
    if (pressed) {
      location.reload();
    } else if (controlled) {
      say(null);
    }
    controlled = true;
  });
  workers.register(base + "worker.js", { updateViaCache: "none" }).then(watch, function () {
    // a browser or a server that does not allow it: the site works as it does from a disk
  });
})();
