package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.content.Club;
import loomwright.generator.content.PlainPage;

/**
 * What the first page says of the club whose folder was added.
 *
 * @param name its name, or null if its folder does not say
 * @param contact where to reach it, or null
 * @param links its own lessons and pages, or null if it has none
 */
record ClubOnStart(String name, String contact, Links links) {

    /** Null if there is no club. */
    static ClubOnStart of(Site site, String address) {
        Club club = site.content().club();
        if (club == null) {
            return null;
        }
        List<Place> places = new ArrayList<>();
        if (!club.lessons().isEmpty()) {
            places.add(new Place(titleOfLessons(club), "lessons.html#" + LessonList.CLUB));
        }
        for (PlainPage page : club.pages()) {
            places.add(new Place(page.article().title(), page.article().address()));
        }
        return new ClubOnStart(orNull(club.name()), orNull(club.contact()), Links.of(address, places));
    }

    static String titleOfLessons(Club club) {
        return club.name().isEmpty() ? "More lessons" : "Lessons of " + club.name();
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
