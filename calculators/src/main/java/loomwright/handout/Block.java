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
        StringBuilder page = new StringBuilder();
        double left = firstRoom;
        boolean empty = true;
        for (Block block : blocks) {
            if (!empty && block.height > left) {
                pages.add(page.toString());
                page = new StringBuilder();
                left = room;
            }
            page.append(block.html);
            left -= block.height;
            empty = false;
        }
        pages.add(page.toString());
        return pages;
    }
}
