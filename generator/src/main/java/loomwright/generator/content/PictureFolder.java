package loomwright.generator.content;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;

/** Finds the photos of the content, and holds them against what a page can bear. */
final class PictureFolder {
    static final String NAME = "pictures";
    private static final int LARGEST = 300_000;
    private static final int LEAST_WIDTH = 200;
    private static final int GREATEST = 2400;

    private final Folder folder;
    private final Problems problems;

    PictureFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** The photos by the name of their file. */
    Map<String, PictureFile> pictures() {
        Map<String, PictureFile> pictures = new TreeMap<>();
        for (String name : folder.names(NAME)) {
            PictureFile picture = picture(name);
            if (picture != null) {
                pictures.put(name, picture);
            }
        }
        return pictures;
    }

    private PictureFile picture(String name) {
        String shown = folder.name() + "/" + NAME + "/" + name;
        int dot = name.lastIndexOf('.');
        if (!List.of("png", "jpg", "webp").contains(name.substring(dot + 1))) {
            return refuse(shown, "this is not the place of such a file",
                    "Photos end in .png, .jpg or .webp; drawings, in .svg, go into the folder \"" + DrawingFolder.NAME + "\".");
        }
        if (!FileNames.isSound(name.substring(0, dot), shown, problems)) {
            return null;
        }
        byte[] bytes = folder.bytes(NAME + "/" + name);
        if (bytes == null) {
            return null;
        }
        if (bytes.length > LARGEST) {
            return refuse(shown, "the photo has " + bytes.length / 1000 + " kB, and a page can bear " + LARGEST / 1000,
                    "Save it smaller: 1200 pixels wide as JPEG or WebP is enough.");
        }
        PixelSize size = PixelSize.of(bytes);
        if (size == null || !name.endsWith("." + size.kind())) {
            return refuse(shown, "the file does not hold what its name says", "Save it anew as PNG, JPEG or WebP, with the ending of its kind.");
        }
        if (size.width() < LEAST_WIDTH || Math.max(size.width(), size.height()) > GREATEST) {
            return refuse(shown, "the photo is " + size.width() + " by " + size.height() + " pixels",
                    "Make it at least " + LEAST_WIDTH + " wide, and no side longer than " + GREATEST + ".");
        }
        if (size.kind().equals("jpg") && PhotoPlace.isTold(bytes)) {
            return refuse(shown, "the photo tells where it was taken", "Save it without its details, so that nobody's place is made public.");
        }
        return new PictureFile(name, shown, bytes, size.width(), size.height());
    }

    private PictureFile refuse(String shown, String words, String remedy) {
        problems.add(Problem.ofFile(shown, words, remedy));
        return null;
    }
}
