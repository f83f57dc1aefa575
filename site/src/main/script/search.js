/* Fills the search page. Needs lunr.js and search-data.js before it. Without this script the page is a list from A to Z. */
(function () {
  "use strict";

  var MOST = 20;
  var entries = window.LOOMWRIGHT_SEARCH;
  var form = document.getElementById("search");
  var box = document.getElementById("search-for");
  var said = document.getElementById("search-said");
  var found = document.getElementById("search-found");

  var index = lunr(function () {
    this.ref("number");
    this.field("title", { boost: 10 });
    this.field("summary", { boost: 4 });
    this.field("text");
    for (var i = 0; i < entries.length; i++) {
      this.add({ number: i, title: entries[i].title, summary: entries[i].summary, text: entries[i].text });
    }
  });

  /* Each word counts as it stands, as the beginning of a word, and, if it is long enough, with one letter wrong. */
  function hits(words) {
    return index.query(function (query) {
      lunr.tokenizer(words).forEach(function (token) {
        var word = token.toString();
        query.term(word, { boost: 20 });
        query.term(word, { boost: 4, usePipeline: false, wildcard: lunr.Query.wildcard.TRAILING });
        if (word.length > 4) {
          query.term(word, { editDistance: 1 });
        }
      });
    });
  }

  function item(entry) {
    var item = document.createElement("li");
    var link = document.createElement("a");
    link.href = entry.address;
    link.textContent = entry.title;
    var facts = document.createElement("p");
    facts.className = "facts";
    facts.textContent = entry.kind.charAt(0).toUpperCase() + entry.kind.slice(1) + ". " + entry.summary;
    item.append(link, " ", facts);
    return item;
  }

  function say(words, count) {
    if (words === "") {
      return "";
    }
    if (count === 0) {
      return "Nothing found for " + words + ": try one word";
    }
    return count === 1 ? "1 page" : count + " pages";
  }

  function search() {
    var words = box.value.trim();
    var list = words === "" ? [] : hits(words);
    found.replaceChildren();
    list.slice(0, MOST).forEach(function (hit) {
      found.append(item(entries[Number(hit.ref)]));
    });
    found.hidden = list.length === 0;
    said.textContent = say(words, Math.min(list.length, MOST));
  }

  form.hidden = false;
  form.addEventListener("submit", function (event) {
    event.preventDefault();
  });
  box.addEventListener("input", search);
})();
