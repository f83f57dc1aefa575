package loomwright.table;

import java.util.List;
import loomwright.source.Document;
import loomwright.source.Source;

/** What the comment lines at the top of a table file say. */
record TableHead(String title, Source source, boolean shownWhole, List<String> notes, List<Document> documents) {}
