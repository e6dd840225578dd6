package hutchleaf.cli;

import hutchleaf.sheet.Booklet.Binding;

/** How a printer fills the sheets of a booklet. */
enum BookletSides {
    SHORT_EDGE("short-edge", Binding.NESTED),
    ONE("one", Binding.STACKED);

    private final String word;
    private final Binding binding;

    BookletSides(String word, Binding binding) {
        this.word = word;
        this.binding = binding;
    }

    Binding binding() {
        return binding;
    }

    @Override
    public String toString() {
        return word;
    }
}
