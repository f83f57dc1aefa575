package loomwright.plan;

import loomwright.worked.NextQuestion;

/**
 * One choice of the plan.
 *
 * @param partId the part of the circuit it is about; empty if it is about none
 * @param what what was chosen, such as {@code Run to Lights: 1.5 mm², 4 m}
 * @param why in one sentence
 * @param working the calculator that works it out, with its entries; null if it is no matter of figures
 * @param lesson the lesson that explains it, by its key
 */
public record Chosen(String partId, String what, String why, NextQuestion working, String lesson) {}
