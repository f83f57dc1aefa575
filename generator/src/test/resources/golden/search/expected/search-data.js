window.LOOMWRIGHT_SEARCH = [
{"title":"1 First","address":"lessons/01-first.html","kind":"lesson","summary":"A first lesson.","text":""},
{"title":"1 First: Heat","address":"lessons/01-first.html#heat","kind":"lesson","summary":"Some \"words\" & signs.","text":"Heat Some \"words\" & signs."},
{"title":"about","address":"about.html","kind":"page","summary":"About it.","text":"Text."},
{"title":"Current of a resistance","address":"calculators/resistor-current.html","kind":"calculator","summary":"How much current does a resistance take?","text":"Gives current, power. Voltage. Across the resistance. Resistance.  Kind. "},
{"title":"Resistance of a rod","address":"calculators/rod-resistance.html","kind":"calculator","summary":"What resistance has one metre of a rod?","text":"Gives resistance of one metre. Cross-section. "},
{"title":"ohm","address":"glossary.html#ohm","kind":"word","summary":"The unit of resistance.","text":""},
{"title":"Where the numbers come from","address":"numbers.html","kind":"page","summary":"Where the numbers come from","text":""},
];
window.LOOMWRIGHT_ALIKE = [
"signs marks",
];
window.LOOMWRIGHT_ASKED = {
"calculators/resistor-current.html":"how many amps",
"lessons/01-first.html#heat":"warm hot",
};
