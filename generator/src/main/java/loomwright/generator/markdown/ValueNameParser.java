package loomwright.generator.markdown;

import com.vladsch.flexmark.parser.InlineParser;
import com.vladsch.flexmark.parser.InlineParserExtension;
import com.vladsch.flexmark.parser.InlineParserExtensionFactory;
import com.vladsch.flexmark.parser.LightInlineParser;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Set;

/** Reads {@code {{name}}} in running text; inside code it stays as it is. */
final class ValueNameParser implements InlineParserExtension {
    /** No name is so long; without a limit a page of open braces would take minutes. */
    private static final int LONGEST = 200;


    @Override
    public void finalizeDocument(InlineParser parser) {
        // nothing is kept
    }

    @Override
    public void finalizeBlock(InlineParser parser) {
        // nothing is kept
    }

    @Override
    public boolean parse(LightInlineParser parser) {
        BasedSequence input = parser.getInput();
        int from = parser.getIndex();
        boolean opens = from + 1 < input.length() && input.charAt(from + 1) == '{';
        int end = opens ? input.indexOf("}}", from, Math.min(input.length(), from + LONGEST)) : -1;
        if (end < 0 || input.subSequence(from, end).indexOf('\n') >= 0) {
            return false;
        }
        parser.flushTextNode();
        parser.getBlock().appendChild(new ValueName(input.subSequence(from, end + 2)));
        parser.setIndex(end + 2);
        return true;
    }

    static final class Factory implements InlineParserExtensionFactory {
        @Override
        public CharSequence getCharacters() {
            return "{";
        }

        @Override
        public InlineParserExtension apply(LightInlineParser parser) {
            return new ValueNameParser();
        }

        @Override
        public Set<Class<?>> getAfterDependents() {
            return null;
        }

        @Override
        public Set<Class<?>> getBeforeDependents() {
            return null;
        }

        @Override
        public boolean affectsGlobalScope() {
            return false;
        }
    }
}
