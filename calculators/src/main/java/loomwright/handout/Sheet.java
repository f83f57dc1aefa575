package loomwright.handout;

import java.util.List;

/**
 * One person's sheet.
 *
 * @param person the number of the person, counted from 1
 * @param code the code that brings the sheet back
 * @param tasks the questions with this person's numbers
 */
public record Sheet(int person, String code, List<Task> tasks) {}
