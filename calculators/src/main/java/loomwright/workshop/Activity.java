package loomwright.workshop;

/** What a day may hold, in the order of the day. */
enum Activity {
    WELCOME("Welcome, register, ways out, who gives first aid", "", "all", 1, 10, 10),
    YOURS("What is yours to do and what is not; take off rings and watches", "what-can-hurt-you", "all, then groups sort pictures of their vehicles", 1, 20, 30),
    AMPERES("From five labels to one list of amperes", "what-will-it-draw", "groups, meter on one charger", 2, 25, 40),
    OFFCUT("Read and measure an offcut", "conductors", "groups", 4, 20, 30),
    DROP("Volts lost along a cable: work it out, then measure it", "voltage-drop", "groups; first sheet, each alone", 1, 30, 50),
    FUSE("The fuse-link and its place: draw your finger line", "fuse-links-and-breakers", "groups, then all", 1, 25, 40),
    SHEET("Second sheet, each alone; mark it by its code", "", "each alone", 3, 20, 25),
    RELAY("Meet a relay: pins, coil, the click, the warm case", "switching", "threes", 5, 25, 40),
    JOINTS("Make crimps, break one, saw one, measure one", "joints", "groups; eye protection on", 1, 35, 55),
    PROVE("Prove one circuit: expected reading first, then the meter", "proving-it", "groups at the demonstration boards", 1, 35, 50),
    TALK("What did not agree, and why; what each will do at home and what not", "", "all", 6, 15, 20),
    CLOSE("Supplies off, tools counted, batteries covered", "", "all", 1, 10, 10);

    final String words;
    /** The end of the key of its lesson, or an empty text. */
    final String lesson;
    final String how;
    /** With little time, those of rank 1 are held; then rank by rank, as long as the least of each fits. */
    final int rank;
    final int least;
    final int usual;

    Activity(String words, String lesson, String how, int rank, int least, int usual) {
        this.words = words;
        this.lesson = lesson;
        this.how = how;
        this.rank = rank;
        this.least = least;
        this.usual = usual;
    }
}
