window.LOOMWRIGHT_SEARCH = [
{"title":"1 First","address":"lessons/01-first.html","kind":"lesson","summary":"A first lesson.","text":"Heat Some \"words\" & signs."},
{"title":"about","address":"about.html","kind":"page","summary":"About it.","text":"Text."},
{"title":"Current of a resistance","address":"calculators/resistor-current.html","kind":"calculator","summary":"How much current does a resistance take?","text":"Gives current, power."},
{"title":"Resistance of a rod","address":"calculators/rod-resistance.html","kind":"calculator","summary":"What resistance has one metre of a rod?","text":"Gives resistance of one metre."},
{"title":"Resistance of rods","address":"tables/rods.html","kind":"table","summary":"The Rod Book","text":""},
{"title":"ohm","address":"glossary.html#ohm","kind":"word","summary":"The unit of resistance.","text":""},
];
