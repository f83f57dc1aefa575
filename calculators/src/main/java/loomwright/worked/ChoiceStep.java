package loomwright.worked;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.source.Source;

/**
 * A step that takes one of a series of standard sizes, or finds that none fits.
 *
 * @param candidates the sizes looked at, in order, each with the reason it was taken or left
 * @param result the size taken, or null if none fits
 * @param source where the series of sizes comes from
 */
public record ChoiceStep(String words, List<Candidate> candidates, Quantity result, String why, Source source) implements Step {}
