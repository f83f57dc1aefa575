/* Fetches the program of the page, named in data-program of this tag, once the page has been painted, and starts it. The page is whole
   without it; when it is ready, it says so on the html element: data-program="ready". */
(function () {
  "use strict";
  var tag = document.currentScript;

  function start() {
    window.main([]);
  }

  function fetchProgram() {
    var program = document.createElement("script");
    program.src = tag.src.replace(/[^/]*$/, tag.dataset.program);
    program.onload = function () { setTimeout(start, 0); };
    document.head.append(program);
  }

  /* A frame is asked for, painted, and then there is time. A tab in the background asks when it is first looked at. */
  requestAnimationFrame(function () { setTimeout(fetchProgram, 0); });
})();
