package loomwright.generator.markdown;

import loomwright.generator.problem.Span;

/** Leads from a place in the text being parsed to the place in the author's file. */
interface Origin {
    Span place(int start, int end);
}
