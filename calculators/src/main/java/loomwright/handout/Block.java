package loomwright.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a page that is not divided.
 *
 * @param html its markup
 * @param height the millimetres it takes on paper, rather too many than too few
 */
record Block(String html, double height) {
    /** Puts blocks on pages, in order; the first page has less room. */
    static List<String> pages(List<Block> blocks, double firstRoom, double room) {
        List<String> pages = new ArrayList<>();
        for (List<Block> page : groups(blocks, firstRoom, room)) {
            StringBuilder html = new StringBuilder();
            for (Block block : page) {
                html.append(block.html);
            }
            pages.add(html.toString());
        }
        return pages;
    }

    /** The blocks of each page. */
    static List<List<Block>> groups(List<Block> blocks, double firstRoom, double room) {
        List<List<Block>> groups = new ArrayList<>();
        List<Block> page = new ArrayList<>();
        groups.add(page);
        double left = firstRoom;
        for (Block block : blocks) {
            if (!page.isEmpty() && block.height > left) {
                page = new ArrayList<>();
                groups.add(page);
                left = room;
            }
            page.add(block);
            left -= block.height;
        }
        return groups;
    }
}
