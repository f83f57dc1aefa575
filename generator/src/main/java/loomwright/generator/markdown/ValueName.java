package loomwright.generator.markdown;

import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** The name of a value between double braces. */
final class ValueName extends Node {
    ValueName(BasedSequence chars) {
        super(chars);
    }

    String name() {
        return getChars().toString().substring(2, getChars().length() - 2).strip();
    }

    @Override
    public BasedSequence[] getSegments() {
        return EMPTY_SEGMENTS;
    }
}
