package loomwright.generator.handout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import loomwright.generator.problem.UserMistake;
import loomwright.handout.Paper;
import loomwright.handout.Printout;
import loomwright.markup.Html;

/**
 * The folder of the sheets: a page for each part and the style sheet, complete without the site. They are written in a folder of their own and put
 * in their place together, so that sheets and key are never of two runs.
 */
public final class HandoutFolder implements AutoCloseable {
    public static final String PDF = "handout.pdf";

    private static final String STYLE = "loomwright.css";
    private static final String BEGIN = "<!DOCTYPE html>\n<html lang=\"en\" class=\"handout-page paper-";
    private static final String WHOLE = "whole.html";
    private static final List<String> PARTS = List.of("register", "tables", "sheets", "answers", "workings");
    private static final List<String> OURS = Stream.concat(PARTS.stream().map(part -> part + ".html"), Stream.of(PDF, WHOLE, STYLE)).toList();

    private final Path target;
    private final Path folder;
    private final String house;
    private final Paper paper;
    private final byte[] style;

    public HandoutFolder(Path folder, String house, Paper paper, byte[] style) {
        this.target = folder.toAbsolutePath().normalize();
        this.house = house;
        this.paper = paper;
        this.style = style;
        try {
            this.folder = Files.createTempDirectory(target.getParent(), "." + target.getFileName() + ".");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a PDF is to be printed. */
    public Path pdf() {
        return folder.resolve(PDF);
    }

    /** Puts everything in its place, and takes away what an earlier run left there and this one did not write. */
    public void finish() {
        try {
            Files.createDirectories(target);
            for (String name : OURS) {
                if (Files.exists(folder.resolve(name))) {
                    Files.move(folder.resolve(name), target.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                } else {
                    Files.deleteIfExists(target.resolve(name));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes what was not put in its place. */
    @Override
    public void close() {
        OURS.forEach(name -> folder.resolve(name).toFile().delete());
        folder.toFile().delete();
    }

    /** Refuses a folder that holds files of others. */
    public static void refuseOther(Path folder) {
        UserMistake.unless(!Files.isRegularFile(folder), "--out " + folder + " is a file. Name a folder.");
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                boolean other = files.anyMatch(file -> !isOurs(file));
                UserMistake.unless(!other, "--out " + folder + " holds files that are no sheets of this program. Name another folder, or empty it.");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** By its name, and a page also by how it begins. */
    private static boolean isOurs(Path file) {
        String name = file.getFileName().toString();
        try {
            return OURS.contains(name) && (!name.endsWith(".html") || Files.size(file) == 0 || Files.readString(file).startsWith(BEGIN));
        } catch (IOException notOurs) {
            return false;
        }
    }

    /** Writes everything. */
    public void write(Printout printout) {
        try {
            Files.write(folder.resolve(STYLE), style);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (Printout.Part part : printout.parts()) {
            page(part.key() + ".html", part.name().substring(0, 1).toUpperCase(Locale.ROOT) + part.name().substring(1), part.html());
        }
    }

    /** Everything on one page, for one PDF: it stands in the folder while the browser prints it. */
    public Path whole() {
        try {
            StringBuilder all = new StringBuilder();
            for (String part : PARTS) {
                String page = Files.readString(folder.resolve(part + ".html"));
                all.append(page, page.indexOf("<main"), page.indexOf("</main>") + "</main>".length());
            }
            return page(WHOLE, "Sheets, register and answer key", all.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path page(String name, String title, String body) {
        String main = body.startsWith("<main") ? body : "<main class=\"sheet\">\n<h1 class=\"unseen\">" + title + "</h1>\n" + body + "</main>";
        String html = BEGIN + paper.key() + "\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" + title + " – " + Html.escape(house)
                + "</title>\n<link rel=\"stylesheet\" href=\"" + STYLE + "\">\n</head>\n<body>\n" + main + "\n</body>\n</html>\n";
        try {
            return Files.write(folder.resolve(name), html.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
