/* Fills the search page. Needs lunr.js and search-data.js before it. Without this script the page is a list from A to Z.

   A reader asks as people talk: each word that matters is looked for together with the words that mean the same, and what answers more
   of the question stands first. A lesson or a calculator that answers comes before a table or a word. */
(function () {
  "use strict";

  var MOST = 20;
  var IDLE = ("a about after again all am an and any anything are as at be because been before being between but by came can cannot cant could did difference do does doing "
      + "dont down each every few find for from get gets getting go going good got had has have having how i if in into is it its just keep keeps know let like many may "
      + "me mean means might mine more most much must my need needed needs no not of on one only or other our ought out over own please put read "
      + "right safe safely same say see shall should so some still such take tell than that the their them then there these they thing things "
      + "this those to too two under until up upon us use used using very want wants was way we were what when where which while who whom why "
      + "will with without wont would you your youre work works").split(" ");
  /* What a hit of each kind counts for; a heading that many lessons have says little by itself. */
  var KINDS = { lesson: 1, calculator: 1.25, page: 0.8, word: 0.45, table: 0.35 };
  var COMMON = 0.55;
  var MANY = 5;
  /* A lesson opens with a story; what answers comes after it. */
  var STORY = 0.75;
  /* A word nobody wrote may be another with one letter wrong, or not. */
  var GUESSED = 0.3;

  var entries = window.LOOMWRIGHT_SEARCH;
  var alike = window.LOOMWRIGHT_ALIKE.map(function (words) { return words.split(" "); });
  var asks = window.LOOMWRIGHT_ASKED;
  var form = document.getElementById("search");
  var box = document.getElementById("search-for");
  var said = document.getElementById("search-said");
  var found = document.getElementById("search-found");

  var headings = {};
  entries.forEach(function (entry) {
    headings[heading(entry)] = (headings[heading(entry)] || 0) + 1;
  });

  function heading(entry) {
    return entry.title.slice(entry.title.lastIndexOf(": ") + 1).trim();
  }

  entries.forEach(function (entry, at) {
    entry.story = at > 0 && entry.kind === "lesson" && entry.address.indexOf("#") > 0 && entries[at - 1].address.indexOf("#") < 0 && !asks[entry.address];
  });

  function weight(entry) {
    return KINDS[entry.kind] * (headings[heading(entry)] > MANY ? COMMON : 1) * (entry.story ? STORY : 1);
  }

  var index = lunr(function () {
    this.ref("number");
    this.field("title", { boost: 6 });
    this.field("summary", { boost: 3 });
    this.field("text");
    this.field("asked", { boost: 6 });
    for (var i = 0; i < entries.length; i++) {
      this.add({ number: i, title: entries[i].title, summary: entries[i].summary, text: entries[i].text, asked: asks[entries[i].address] || "" });
    }
  });

  /* The words that count; all of them if none does. */
  function asked(words) {
    var all = lunr.tokenizer(words.replace(/['\u2019]/g, "")).map(function (token) {
      return token.toString().replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, "");
    }).filter(function (word) { return word !== ""; });
    var telling = all.filter(function (word) { return IDLE.indexOf(word) < 0; });
    return telling.length > 0 ? telling : all;
  }

  function others(word) {
    var same = [];
    alike.forEach(function (group) {
      if (group.indexOf(word) >= 0) {
        same = same.concat(group);
      }
    });
    return same.filter(function (other, at) { return other !== word && same.indexOf(other) === at; });
  }

  /* A word counts as it stands, less as the beginning of a word or by another word for the same, least with one letter wrong. */
  function hitsOf(word) {
    var hits = index.query(function (query) {
      query.term(lunr.tokenizer(word), { boost: 20 });
      query.term(word, { boost: 4, usePipeline: false, wildcard: lunr.Query.wildcard.TRAILING });
      others(word).forEach(function (other) {
        query.term(lunr.tokenizer(other), { boost: 8 });
      });
    });
    return hits.length > 0 || word.length < 5 ? { list: hits, trust: 1 } : {
      list: index.query(function (query) {
        query.term(word, { editDistance: 1 });
      }), trust: GUESSED
    };
  }

  function hits(words) {
    var terms = asked(words);
    var scores = {};
    var known = 0;
    terms.forEach(function (word) {
      var hits = hitsOf(word);
      var list = hits.list;
      known += list.length > 0 ? hits.trust : 0;
      var most = list.length > 0 ? list[0].score : 1;
      list.forEach(function (hit) {
        var score = scores[hit.ref] || (scores[hit.ref] = { sum: 0, words: 0 });
        score.sum += hits.trust * Math.sqrt(hit.score / most) * (1 + Math.log(entries.length / list.length));
        score.words += hits.trust;
      });
    });
    return Object.keys(scores).map(function (ref) {
      var score = scores[ref];
      var share = score.words / known;
      return { ref: ref, score: score.sum * share * share * weight(entries[Number(ref)]) };
    }).sort(function (one, other) { return other.score - one.score; });
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
    return count === 1 ? "1 place" : count + " places, what answers best first";
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
