package loomwright.formula;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;

/** What the letters of a formula stand for in one working. Never changes; {@link #with} makes a new one. */
public final class Values {
    private static final Values NONE = new Values(List.of(), List.of());

    private final List<Symbol> symbols;
    private final List<Quantity> quantities;

    private Values(List<Symbol> symbols, List<Quantity> quantities) {
        this.symbols = symbols;
        this.quantities = quantities;
    }

    public static Values none() {
        return NONE;
    }

    public static Values of(Symbol symbol, Quantity quantity) {
        return NONE.with(symbol, quantity);
    }

    /**
     * These values and one more; a later value replaces an earlier one of the same letter.
     *
     * @throws IllegalArgumentException if the quantity is not of the kind the letter stands for
     */
    public Values with(Symbol symbol, Quantity quantity) {
        if (!symbol.dimension().equals(quantity.dimension())) {
            throw new IllegalArgumentException(quantity.text() + " cannot be the " + symbol.meaning());
        }
        List<Symbol> moreSymbols = new ArrayList<>(symbols);
        List<Quantity> moreQuantities = new ArrayList<>(quantities);
        int at = moreSymbols.indexOf(symbol);
        if (at >= 0) {
            moreQuantities.set(at, quantity);
        } else {
            moreSymbols.add(symbol);
            moreQuantities.add(quantity);
        }
        return new Values(moreSymbols, moreQuantities);
    }

    /**
     * The quantity a letter stands for.
     *
     * @throws IllegalArgumentException if it stands for nothing here
     */
    public Quantity of(Symbol symbol) {
        int at = symbols.indexOf(symbol);
        if (at < 0) {
            throw new IllegalArgumentException("no value for the " + symbol.meaning());
        }
        return quantities.get(at);
    }
}
